# The sentences about fitting a border to a piece. No stitch is named here: what it is called depends on the terms.

side-TOP = top
side-LEFT = left
side-BOTTOM = bottom
side-RIGHT = right
# Two sides that are spoken of together, in working order.
sides-TOP-BOTTOM = top and bottom
sides-LEFT-RIGHT = left and right

counting-STITCHES = stitches only
counting-WITH_CHAINS = with one corner chain at each end

round-base = the base round
round-number = round { $round }

stitches = { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }
changes = { $changes ->
    [one] 1 change
   *[other] { $changes } changes
    }
repeats-none = with no repeat
repeats = { $repeats ->
    [one] with the repeat once
   *[other] with the repeat { $repeats } times
    }

plan-counted = Counted in { $round }, { $counting }: { $counts }.
plan-count = { $side } { $stitches }
plan-done = Every side comes out even. Change nothing.
plan-closes = { $side }: { $counted } comes out even, { $repeats }.
plan-change = { $side }: { $counted } should be { $wanted }, { $repeats }. { $what }
# $stitches: their numbers, or the pairs
plan-add = { $changes ->
    [one] Add 1: work two into stitch { $stitches }.
   *[other] Add { $changes }: work two into each of stitches { $stitches }.
    }
plan-lose = { $changes ->
    [one] Lose 1: work stitches { $stitches } together.
   *[other] Lose { $changes }: work together stitches { $stitches }.
    }
# Two neighbours that are worked together.
plan-pair = { $first } + { $second }
plan-next = { $sides }: the next sizes are { $smaller } and { $larger }.
plan-nextLarger = { $sides }: the next size is { $larger }; there is no smaller one.

way-STITCHES = { $side }, in { $round }: 1 stitch in the corner chain, { $way }; then 1 stitch in the next corner chain. The side then has { $stitches }.
way-WITH_CHAINS = { $side }, in { $round }, from the corner chain to the next corner chain: { $way }. The side then has { $stitches }.
way-work = work { $stitches }
way-INCREASE = two in the next
way-DECREASE = the next two together
way-times = ({ $steps }) { $times } times

back-counted = Counted in back round { $round }, { $counting }: { $counts }. It has the counts of round { $front } of the front.
back-changing = Make the changes in back round { $round }.
# $arm: stitches at either arm of a corner
back-way = { $side }, in back round { $round }: { $arm } in the corner chain, { $way }; then { $arm } in the next corner chain. The side then has { $stitches }.

rounds-plain = Best for this chart: count in { $counting }, change in { $changing }, count again in { $checking }.
rounds-noCheck = Best for this chart: count in { $counting }, change in { $changing }, and count that round again.
rounds-base = Have the counts right when the base round is done: no plain round is left in which to change them before the design begins.
rounds-why = These are the last plain rounds before the first long stitch, in round { $round }.

warning-crowded-add = { $side }: { $changes } in { $stitches } are more than one in six. The edge will ruffle.
warning-crowded-lose = { $side }: { $changes } in { $stitches } are more than one in six. The edge will pull in.
warning-landsAcross = After changes in round { $changing } these long stitches would drop to where two stitches share a foot or one stands on two: { $where }. Change in an earlier round, or choose other places.
# $count: how many of these long stitches the side has
warning-landsAcross-at = { $count ->
    [one] { $side }, round { $round }, stitch { $stitches }
   *[other] { $side }, round { $round }, stitches { $stitches }
    }
warning-tooLate = Changes in round { $changing } come too late: the first long stitches are in round { $firstLong }, and until the counts are right the design does not come out even.
relief-otherCount = It would help to aim at { $stitches } for { $sides }.
relief-untie = It would help to let { $sides } have different counts.

refusal-tooSmall = The piece is too small for this border. In { $round } a side must have at least { $fewest }, { $counting }.
refusal-tooSmall-side = { $side }: { $stitches }, which is { $missing } too few.
refusal-tooSmall-help = Pick up more stitches in the base round, or choose a border with shorter corners.
refusal-open = { $sides }: { $stitches } does not come out even; { $smaller } and { $larger } do.
refusal-open-fewest = { $sides }: { $stitches } does not come out even; the smallest count that does is { $larger }.
refusal-cannotClose-WANTED = The border cannot come out even in { $round } on the counts that are asked for: { $counts }.
refusal-cannotClose-NO_ROUND_LEFT = The border does not come out even, and { $round } is its last: there is no round left to change the counts in.
closing-tooShort = A side must have at least { $fewest }. Too short: { $sides }.
closing-cornersMiss = Every side is out by the same number: the design would come out even only with corner sections that together have { $longer } more{ $shorter ->
    [0] {""}
   *[other] {" "}or { $shorter } fewer
    }.
closing-sidesDiffer = { $side } and { $other } differ by { $difference }, which is not a multiple of the repeat of { $repeat }: whatever the corners, one of the two is always out. Only a repeat of { $widths } stitches could come out even on all sides of this piece.
closing-help-WANTED = Let a few stitches be added or lost.
closing-help-NO_ROUND_LEFT = Pull the border back to its last plain rounds and put the counts right there.
refusal-noRoom = There are too many changes for one round.
refusal-noRoom-add = { $side }: { $changes } to add to { $stitches }, but away from the corners there is room for only { $most }.
refusal-noRoom-lose = { $side }: { $changes } to lose of { $stitches }, but away from the corners there is room for only { $most }.
refusal-noRoom-help = Choose another size, or work the base round again with more suitable counts.
refusal-notInWords = It can be made to fit, but no pattern in words for this piece could be worked.
# $count: how many rounds
refusal-notInWords-patterned = { $count ->
    [one] Round { $rounds } already has a pattern, and on counts that are not right yet it does not come out even.
   *[other] Rounds { $rounds } already have a pattern, and on counts that are not right yet they do not come out even.
    }

# What a maker should see in a round.
landmark-each-BETWEEN_LONGS_BELOW = Each long stitch sits between two long stitches of the round below.
landmark-each-AFTER_LONG_BELOW = Each long stitch comes directly after a long stitch of the round below.
landmark-each-BEFORE_LONG_BELOW = Each long stitch comes directly before a long stitch of the round below.
landmark-each-BESIDE_LONG_BELOW = Each long stitch comes directly before or after a long stitch of the round below.
landmark-each-MIDWAY_BETWEEN_LONGS_BELOW = Each long stitch stands midway between two long stitches of the round below.
landmark-each-OVER_LONG_TWO_BELOW = Each long stitch stands over a long stitch two rounds below.
landmark-groups = The long stitches stand in groups of { $longs }.
landmark-first = The first long stitch after a corner is stitch { $stitch } (the one in the corner chain is 1).
landmark-firstInCorner = The first long stitch after a corner is stitch 2 (the one in the corner chain is 1): it goes into the corner chain two rounds below.
landmark-longs = { $longs ->
    [one] 1 long stitch
   *[other] { $longs } long stitches
    }
# The repeat of the chart can be longer than the group after the asterisk.
landmark-onSide = Each side has { $longs }.
landmark-onRepeat = Each repeat of the chart has { $longs }, and the corners have none.
landmark-onBoth = Each side has { $corners } near its corners, and { $repeat } more in each repeat of the chart.
landmark-onSides = Long stitches: { $counts }.

multiple-any = any number from { $fewest }, { $counting }
multiple-plus = multiple of { $multiple } plus { $plus }, at least { $fewest }, { $counting }
multiple-even = multiple of { $multiple }, at least { $fewest }, { $counting }

pickUp = { $side }: pick up { $stitches }{ $spread }.
pickUp-exactly = , { $stitches } in every { $rows } rows
pickUp-about = , about { $stitches } in every { $rows } rows
pickUp-eachRow = , { $stitches } in every row
pickUp-aboutEachRow = , about { $stitches } in every row
pickUp-eachStitch = , one in every stitch
pickUp-stitchesMore = , one in every stitch and { $stitches } more, spread evenly
pickUp-stitchesFewer = , one in every stitch but for { $stitches }, spread evenly
pickUp-quarters = Marks at the quarters: { $marks }.
pickUp-mark-length = { $stitches } by { $cm } cm
pickUp-mark-rows = { $stitches } by row { $row }
pickUp-mark-stitches = { $stitches } by stitch { $stitch }

# In centimetres, and in inches as below; which of them leads goes by the terms. $terms: UK or US
size-outer = { $terms ->
    [US] The border is { $borderInches } in ({ $border } cm) wide. With it the piece measures { $acrossInches } by { $downInches } in ({ $across } by { $down } cm).
   *[UK] The border is { $border } cm ({ $borderInches } in) wide. With it the piece measures { $across } by { $down } cm ({ $acrossInches } by { $downInches } in).
    }
size-ruffles = The last round is { $cm } cm too long for each side of the piece: the edge may ruffle.
size-cups = The last round is { $cm } cm too short for each side of the piece: the corners may cup.

# A length to the nearest quarter of an inch, without its unit. $quarters: what there is over the whole inches
inches = { $quarters ->
    [1] { $whole }¼
    [2] { $whole }½
    [3] { $whole }¾
   *[other] { $whole }
    }
inches-belowOne = { $quarters ->
    [1] ¼
    [2] ½
   *[other] ¾
    }
