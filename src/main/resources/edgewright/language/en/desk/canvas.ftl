# The chart as it is drawn on the desk, its keys, and what is copied and pasted.

# The chart
canvas-name = Chart of { $title }
canvas-key-left = One stitch to the left
canvas-keys-left = LEFT, KP_LEFT
canvas-shown-left = ←
canvas-key-right = One stitch to the right
canvas-keys-right = RIGHT, KP_RIGHT
canvas-shown-right = →
canvas-key-up = One stitch up
canvas-keys-up = UP, KP_UP
canvas-shown-up = ↑
canvas-key-down = One stitch down
canvas-keys-down = DOWN, KP_DOWN
canvas-shown-down = ↓
canvas-key-home = To the first drawn stitch of the round on this arm
canvas-keys-home = HOME
canvas-shown-home = Home
canvas-key-end = To the last drawn stitch of the round on this arm
canvas-keys-end = END
canvas-shown-end = End
canvas-key-b = Back-loop, and on to the next stitch in working order
canvas-keys-b = B
canvas-shown-b = B
canvas-key-p = Plain, and on
canvas-keys-p = P
canvas-shown-p = P
canvas-key-l = Long, and on
canvas-keys-l = L
canvas-shown-l = L
canvas-key-c = Chain, and on
canvas-keys-c = C
canvas-shown-c = C
canvas-key-work = The chosen stitch, and on; held, it moves the chart with the mouse
canvas-keys-work = SPACE
canvas-shown-work = Space
canvas-key-takeOut = Take out the stitch at the cursor
canvas-keys-takeOut = DELETE
canvas-shown-takeOut = Delete
canvas-key-takeOutBack = One stitch back, and take it out
canvas-keys-takeOutBack = BACK_SPACE
canvas-shown-takeOutBack = Backspace
canvas-key-pick = Choose the stitch at the cursor
canvas-keys-pick = K
canvas-shown-pick = K
canvas-key-markLeft = Extend the marks to the left
canvas-keys-markLeft = shift LEFT, shift KP_LEFT
canvas-shown-markLeft = Shift ←
canvas-key-markRight = Extend the marks to the right
canvas-keys-markRight = shift RIGHT, shift KP_RIGHT
canvas-shown-markRight = Shift →
canvas-key-markUp = Extend the marks upwards
canvas-keys-markUp = shift UP, shift KP_UP
canvas-shown-markUp = Shift ↑
canvas-key-markDown = Extend the marks downwards
canvas-keys-markDown = shift DOWN, shift KP_DOWN
canvas-shown-markDown = Shift ↓
canvas-key-unmark = Cancel what is being drawn, or clear marks
canvas-keys-unmark = ESCAPE
canvas-shown-unmark = Esc
canvas-key-toolDown = Put the tool down at the cursor, or take it off: arrow keys go on with it, Esc takes it back
canvas-keys-toolDown = ENTER
canvas-shown-toolDown = Enter
canvas-key-lift = Lift what is marked, to be carried with the arrow keys; again, or Enter, drops it
canvas-keys-lift = G
canvas-shown-lift = G
canvas-key-tool-pointer = Pointer: a click only puts the cursor there
canvas-keys-tool-pointer = N
canvas-shown-tool-pointer = N
canvas-key-tool-marker = Marker: mark stitches, and carry what is marked
canvas-keys-tool-marker = M
canvas-shown-tool-marker = M
canvas-key-tool-brush = Brush: work every stitch it comes over
canvas-keys-tool-brush = D
canvas-shown-tool-brush = D
canvas-key-tool-line = Line
canvas-keys-tool-line = I
canvas-shown-tool-line = I
canvas-key-tool-rectangle = Rectangle
canvas-keys-tool-rectangle = R
canvas-shown-tool-rectangle = R
canvas-key-tool-fill = Fill: like stitches that hang together
canvas-keys-tool-fill = F
canvas-shown-tool-fill = F
canvas-key-mirror-corner = Mirror across the corner, on or off
canvas-keys-mirror-corner = X
canvas-shown-mirror-corner = X
canvas-key-mirror-repeat = Mirror across the middle of the repeat, on or off
canvas-keys-mirror-repeat = Y
canvas-shown-mirror-repeat = Y
canvas-key-mirror-half = The same half a repeat on, on or off
canvas-keys-mirror-half = H
canvas-shown-mirror-half = H
motif-copied = Copied { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    } by { $columns ->
    [one] 1 column
   *[other] { $columns } columns
    }.
motif-pasted = Pasted in { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }.
motif-roundsBeyond = { $rounds ->
    [one] 1 round lies
   *[other] { $rounds } rounds lie
    } beyond the outermost round and { $rounds ->
    [one] was
   *[other] were
    } not pasted.
motif-stitchesBeyond = { $stitches ->
    [one] 1 stitch lies
   *[other] { $stitches } stitches lie
    } beyond the ends of the side and { $stitches ->
    [one] was
   *[other] were
    } not pasted.
motif-stitchesOver = The motif is wider than the repeat: { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    } gave way to a later one in the same place.
motif-none = The clipboard holds no stitches. Stitches are lines of the letters b, p, l and c.
motif-unknownLetter = The clipboard holds no stitches: in line { $line } stands ‘{ $letter }’. Stitches are the letters b, p, l and c; a dot is no stitch, a plus the corner.
motif-otherLength = The clipboard holds no motif: line { $line } has { $letters ->
    [one] 1 letter
   *[other] { $letters } letters
    } and the first line { $expected }. All lines must be of one length; a dot is no stitch.
motif-otherCorner = The clipboard holds no motif: in line { $line } the plus of the corner does not stand where it stands in the first line.
motif-noCursor = A motif begins at the cursor. Put the cursor on a stitch first.
motif-dropped = Dropped.
motif-flipped = Flipped.
motif-carried = Worked on the other arm.
motif-repeated = Worked along the whole side.
motif-repeatedUneven = Worked along the whole side, but the repeat of { $width } columns is no multiple of { $columns ->
    [one] 1 column
   *[other] { $columns } columns
    }: the last time in each repeat it is cut off.

# Names of edits
edit-motif-move = move motif
edit-motif-copy = copy motif
edit-motif-flip = flip motif
edit-motif-otherArm = motif on the other arm
edit-motif-repeat = motif along the side
edit-paste = motif of { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, { $columns ->
    [one] 1 column
   *[other] { $columns } columns
    }
