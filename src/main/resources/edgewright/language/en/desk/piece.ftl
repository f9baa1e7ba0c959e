# The piece that the border goes round
piece-title = The border on a piece
piece-drawing = The piece
piece-answers = What to do on the piece
piece-tab-answer = What to do
piece-tab-rounds = Every round
piece-tab-sizes = Sizes
piece-way-COUNTED = &Counted sides
piece-wayTip-COUNTED = The base round or more is on the piece, and you have counted the stitches of a round
piece-way-MEASURED = Bare piece, in c&m
piece-wayTip-MEASURED = No round is on the piece yet, and you have measured its edges
piece-way-ROWS = Bare piece, in ro&ws
piece-wayTip-ROWS = No round is on the piece yet, and you have counted its stitches and rows
piece-countedIn = Counted &in
piece-round-best = { $round } (best)
piece-field = { $side }, { $unit }
piece-tie-level = Top and &bottom equal
piece-tie-level-tip = Both sides get the same count, as on a piece with square corners
piece-tie-upright = Left and &right equal
piece-tie-upright-tip = Both sides get the same count, as on a piece with square corners
piece-nearest = &Nearest counts
piece-nearest-tip = Go back to the counts that need the fewest changes
piece-wanted = { $side }: should be { $stitches }
piece-change-line = { $change } · { $repeats ->
    [0] no repeat
    [one] 1 repeat
   *[other] { $repeats } repeats
    }
piece-repeats = { $repeats ->
    [0] no repeat
    [one] 1 repeat
   *[other] { $repeats } repeats
    }
piece-smaller = ‹ { $stitches }
piece-smaller-heard = { $side }: the next smaller size, { $stitches }
piece-larger = { $stitches } ›
piece-larger-heard = { $side }: the next larger size, { $stitches }
piece-noSize = –
piece-noSize-heard = { $side }: there is no smaller size
piece-mark-INCREASE = two in one
piece-mark-DECREASE = two together
piece-mark-QUARTER = a quarter of the edge, with the stitches up to it
piece-front = Fr&ont
piece-front-round = The round of the front that was counted
piece-warning = Warning
piece-sides = On each side
piece-rounds = In which rounds
piece-swatch-stitches = Swatc&h:
piece-swatch-rounds = stitches by
piece-swatch-end = rounds in 10 cm
piece-ratio-stitches = &Pick up
piece-ratio-rows = in every
piece-ratio-end = rows
piece-table-rounds = Counts in every round
piece-table-sizes = Sizes of a side
piece-table-none = Counts appear here as soon as the sides are known and can come out even.
piece-size = With this swatch
piece-fold = Fold or open what to do
piece-left = &Left-handed
piece-left-tip = The sides are come to clockwise, and stitches are counted the other way round; the chart is seen so too
piece-words = &Save its words…
piece-words-tip = Save the pattern in words for this piece alone, with its counts
piece-publish = P&ublish for it…
piece-publish-tip = Publish the pattern for this piece alone, with its counts
piece-noWords = No words for this piece
piece-keep = &Keep counts
piece-keep-tip = Keep what was counted in this round with the chart: it is there again when the chart is opened
piece-forget = &Forget counts
piece-forget-tip = Take all counts of this piece out of the chart
piece-kept = Kept with the chart: { $rounds }.
piece-kept-none = No counts are kept with the chart.
edit-keepPiece = keep the counts of the piece
edit-forgetPiece = forget the counts of the piece
