# Words of everyday language that are spelled, or said, otherwise where US terms are used. All other files spell them the first way.
# From memory; ( ) are called parentheses in patterns in US terms, [ ] brackets.
respelled = anticlockwise: counterclockwise | ball band: yarn label | brackets: parentheses | centimetre: centimeter | colour: color | grey: gray | metre: meter | neighbour: neighbor | neighbouring: neighboring | towards: toward
