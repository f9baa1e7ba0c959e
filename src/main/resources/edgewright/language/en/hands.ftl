# Why a maker stops, as a maker would say it. $place: see below; $wanted: the stitch that was to be made; $expected: the number
# that the words ask for; $found: the number that there is.

place-base = Base round, { $side }
place-backBase = Back base round, { $side }
place-back = Back round { $round }, { $side }
place-joining = Joining round, { $side }
place-stitch = Round { $round }, { $side }, stitch { $stitch }
place-side = Round { $round }, { $side }

side-TOP = top edge
side-LEFT = left-hand edge
side-BOTTOM = bottom edge
side-RIGHT = right-hand edge

stitch-BACK_LOOP = a back-loop stitch
stitch-PLAIN = a plain stitch
stitch-LONG = a long stitch
stitch-CHAIN = a chain

stop-NO_ROUND_BELOW = { $place }: { $wanted } is asked for, but there is no round two below to drop into.
stop-NOTHING_UNDER_CORNER = { $place }: { $wanted } is asked for, but under the corner chain there is nothing of this side to drop into.
stop-COVERED = { $place }: { $wanted } is asked for, but the loop two rounds below lies behind the long stitch between.
stop-LOOP_TAKEN = { $place }: { $wanted } is asked for, but the stitch between has taken the loop that it needs; it can only go into a free front loop.
stop-ACROSS_A_CHANGE = { $place }: { $wanted } is asked for, but the stitch between shares its foot with its neighbour or stands on two, so there is no one loop to drop into.
stop-CHANGE_NOT_PLAIN = { $place }: stitches are added or lost here with { $wanted }, which is not worked into the stitch below.
stop-ON_LONG = { $place }: { $wanted } is asked for, but there is a long stitch two rounds below, and this pattern does not stack them.
stop-ON_CHAIN = { $place }: { $wanted } is asked for, but there is a chain two rounds below, which has no front loop that holds.
stop-ON_CORNER = { $place }: { $wanted } is asked for, but it would land in a corner chain, and this pattern does not do that.
stop-CHAIN_OVER_CORNER = { $place }: { $wanted } is asked for, but then nothing holds the corner; a stitch is needed here.
stop-SIDE_FULL = { $place }: { $wanted } is asked for, but the side has reached its corner after { $found ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $found } stitches
    }.
stop-STITCHES_LEFT = { $place }: the words turn the corner here, but { $found ->
    [one] 1 stitch of this side is
   *[other] { $found } stitches of this side are
    } still to be worked.
stop-NO_PLACE_TO_JOIN = { $place }: the yarn is to be joined in stitch { $joinStitch } of the round below, but with both corner chains there are only { $found }.
stop-MARK_ELSEWHERE = { $place }: here is the stitch in which the round is joined, but in its words the mark of the start stands { $found ->
    [0] at the corner
    [one] after 1 stitch of the side
   *[other] after { $found } stitches of the side
    }.
stop-NOT_TO_BE_CLOSED = { $place }: the round is joined here, where { $wanted } is worked; only a stitch that is worked into the one below can close a round.
stop-PAST_THE_JOIN = { $place }: { $wanted } is asked for, but the round is back where its yarn was joined, and the next stitch is already worked.
stop-SHORT_OF_THE_JOIN = { $place }: the round ends here, but { $found ->
    [one] 1 stitch
   *[other] { $found } stitches
    } up to where the yarn was joined { $found ->
    [one] is
   *[other] are
    } still to be worked.
stop-GROUP_DOES_NOT_FIT = { $place }: { $found ->
    [0] no stitches are
    [one] 1 stitch is
   *[other] { $found } stitches are
    } left, and the group after the asterisk does not come out even before the last { $expected }.
stop-COUNT_NOT_MET = { $place }: { $found ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $found } stitches
    } made, but the pattern states { $expected }.
stop-MULTIPLE_NOT_MET = { $place }: { $found ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $found } stitches
    } made, which is { $expected } more than the multiple that the pattern states.
stop-BACK_COUNT_NOT_MET = { $place }: { $found ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $found } stitches
    } made, but the pattern states { $expected }.
stop-BACK_MULTIPLE_NOT_MET = { $place }: { $found ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $found } stitches
    } made, which is { $expected } more than the multiple that the pattern states.
stop-BACK_NOT_AS_FRONT = { $place }: { $found ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $found } stitches
    } made, but the round of the front that it should match has { $expected }.
stop-CORNERS_DIFFER = { $place }: the front turns its corners with { $expected } ch and the back with { $found }, so the layers do not meet.
stop-LAYERS_DIFFER = { $place }: the front has { $expected ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $expected } stitches
    } and the back has { $found }, so the layers do not meet.
stop-BASE_TOO_SHORT = { $place }: { $found ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $found } stitches
    }, but the pattern needs at least { $expected }.
