# The chart as it is drawn on the desk, and what is copied and pasted.

# The chart
canvas-name = Chart of { $title }
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
