# What several rooms of the desk say. An ampersand stands before the letter that works as mnemonic.

# Rounds
rounds-counting = How sides are counted
counting-STITCHES = stitches only
counting-WITH_CHAINS = with corner chains
layout-SENTENCES = in sentences
layout-TABLE = as a table
eachRound = Each round b&y itself
eachRound-tip = Otherwise rounds that are worked alike stand under one title

# Yarns
yarn-short = { $id } · { $yarn }
yarn-objection-name = A yarn needs a name.

# Words
words-ragged = There are no words while a section has the wrong length for its round. The findings say which one, and even it out.

# The chart
clipboard-busy = Another program is using the clipboard. Nothing was copied or pasted; try again.

# Dialogs
newChart-untitled = New border
newChart-firstYarn = Peat
newChart-secondYarn = Chalk
terms-UK = UK terms
terms-US = US terms
terms-BOTH = UK terms, then US terms
size-level = Repeats, top and &bottom
size-upright = Repeats, left and &right

# The round guide
guide-mm = { $mm } mm
