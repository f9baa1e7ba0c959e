# What comes of a piece and its counts.

# The piece that the border goes round
piece-round-base = the base round
piece-round-base-short = base round
piece-round-front = round { $round }
piece-round-back = back round { $round }
piece-side-TOP = Top
piece-side-LEFT = Left
piece-side-BOTTOM = Bottom
piece-side-RIGHT = Right
piece-unit-cm = cm
piece-unit-stitches = stitches
piece-unit-rows = rows
piece-change-none = as it is
piece-change-add = add { $stitches }
piece-change-lose = lose { $stitches }
piece-ask = How long are the sides?
piece-ask-level = And top and bottom?
piece-ask-upright = And left and right?
piece-how-COUNTED = Count the stitches on each side of the piece in one round, and type the numbers at the sides. A side left empty is taken to be like the one opposite. The round marked as best is the last plain one after which there is still time to put the counts right.
piece-how-MEASURED = Measure the edges of the piece in centimetres, and type the lengths at the sides. An edge left empty is taken to be like the one opposite. The swatch below says how many stitches lie along an edge.
piece-how-ROWS = Type the stitches of the top and bottom edges, and the rows of the left and right edges. An edge left empty is taken to be like the one opposite.
piece-front-unread = Type the counts of the front as four numbers with commas between them, in the order top, left, bottom, right; or as two, for top and bottom, then left and right.
piece-front-open = The front is not right yet
piece-front-open-text = The counts of the front in { $where } do not come out even on every side. Put the front right first.
piece-ask-front = What counts has the front?
piece-ask-front-text = The back must have the very counts of the front, or the layers cannot be joined. Type in the counts of the front, in any of its rounds.
piece-mistake = This cannot be read yet
piece-mistake-number = { $side }: “{ $typed }” is not a whole number up to 10,000.
piece-mistake-length = { $side }: “{ $typed }” is not a length in centimetres.
piece-mistake-chains = { $side }: with its corner chains counted, a side has at least 2; { $typed } is too few.
piece-mistake-none = { $side }: an edge has at least one.
piece-ragged = Not while a section has the wrong length
piece-ragged-text = A section has the wrong length for its round, so the stitches of a side cannot be counted. The findings beside the chart say which one, and even it out.
piece-fits = It fits as it is
piece-fits-text = Every side comes out even. Change nothing.
piece-changes = { $changes ->
    [one] 1 change makes it fit
   *[other] { $changes } changes make it fit
    }
piece-tooSmall = Too small for this border
piece-cannotClose = This does not come out even
piece-noRoom = Too many changes for one round
piece-pickUp = Pick up { $stitches } stitches
piece-pickUp-text = For the base round, corner chains not counted.
piece-rounds-here = As you counted in { $where }, make the changes in round { $round }.
piece-rounds-back = Back round { $back } has the counts of round { $round } of the front.
piece-swatch-guess = The swatch is a guess until you type your own.
piece-swatch-none = Two numbers above 0 are needed in the swatch to give the size.
piece-swatch-needed = Fill in the swatch below the drawing, two numbers above 0: it says how many stitches lie along an edge.
piece-ratio-needed = Above the drawing, say how many stitches to pick up in how many rows: two whole numbers from 1 to 100.
piece-decimal = { $number }
piece-cm = { $cm }
piece-rounds-caption = The sides in every round, { $counting }.
piece-rounds-caption-changed = The sides in every round, { $counting }: up to { $where } as you counted them, from round { $round } on with the changes made.
piece-sizes-caption = The sizes that a side can have, { $counting }. In bold: the sides of this piece.
piece-column-round = Round
piece-column-back = Back
piece-column-repeats = Repeats
piece-column-base = Base
piece-column-inRound = Round { $round }
piece-column-cm = cm
piece-column-sides = Side
piece-cell-base = base
piece-cell-back = back { $round }
