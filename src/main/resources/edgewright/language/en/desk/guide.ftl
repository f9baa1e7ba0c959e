# Names of edits
edit-making = how it is made
edit-startHere = rounds start in column { $column }

# The round guide
guide-title = Round guide
guide-heading = Round { $round } of { $rounds }, { $yarn }
guide-previous = &Previous
guide-previous-tip = Go to the round before
guide-next = &Next
guide-next-tip = Go to the next round
guide-level = Repeats, top and botto&m
guide-upright = left and ri&ght
guide-side-TOP = top
guide-side-LEFT = left
guide-side-BOTTOM = bottom
guide-side-RIGHT = right
guide-noCount = –
guide-way-STITCHES = Stitches on a side, corner chains not counted
guide-way-WITH_CHAINS = Stitches on a side, with one corner chain at each end
guide-tick-TOP = &top
guide-tick-LEFT = &left
guide-tick-BOTTOM = &bottom
guide-tick-RIGHT = &right
guide-tick-COUNTED = &counted
guide-progress = { $done ->
    [0] No round is done yet
    [one] 1 round of { $rounds } is done
   *[other] { $done } rounds of { $rounds } are done
    }

# How the border is made
making-title = How it is made
making-accept = C&hange
making-start = &Start rounds along a side
making-start-tip = If not, every round starts at a corner
making-found = &Find the best column
making-found-tip = The column in which starts have to move least to avoid long stitches
making-column = Start c&olumn
making-odd = Side of rounds &1, 3, 5 …
making-even = Side of rounds &2, 4, 6 …
making-hook = Hoo&k
making-hook-none = not given
making-swatch = There is a s&watch
making-swatch-tip = In the border's own stitches
making-stitches = S&titches in 10 cm
making-rounds = &Rounds in 10 cm
making-back = A &back layer (double border)
making-back-tip = Rounds twice as high, half as many, on a base round of their own
making-backHook = Hook of the b&ack layer
making-backHook-smaller = one size smaller
making-weight = &Yarn weight
making-noWeight = not given
making-weight-0 = 0 · lace
making-weight-1 = 1 · super fine
making-weight-2 = 2 · fine
making-weight-3 = 3 · light
making-weight-4 = 4 · medium
making-weight-5 = 5 · bulky
making-weight-6 = 6 · super bulky
making-weight-7 = 7 · jumbo
making-skill = Sk&ill
guide-strip = Round { $round } on one side of the chart, with the rounds below and above it
guide-strip-none = No bit of the chart while a section has the wrong length
