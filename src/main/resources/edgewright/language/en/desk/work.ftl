# What is said of the chart in work: names of edits, places, the guide to a round.

# The status line
status-stitch-b = back-loop stitch
status-stitch-p = plain stitch
status-stitch-l = long stitch
status-stitch-c = chain
status-short = { $place }: { $stitch }, stands on { $below }.
status-long = { $place }: { $stitch } over { $below }, { $landing }.
status-ragged = { $place }: { $stitch }. What it stands on is not known while a section has the wrong length.
status-at = a { $stitch } of round { $round }
status-baseRound = the base round
status-chainStart = the corner chain just turned, of round { $round }
status-chainNext = the next corner chain of round { $round }
status-lands = lands in { $place }
status-landsNowhere-round = has no round to land on
status-landsNowhere-corner = has nothing to land on past the corner

# Places
where-stitch = Round { $round }, { $section }, stitch { $place }
cell-stitch = { $place }: { $stitch }, yarn { $id }, { $yarn }.
cell-finding = { $stitch } { $finding }
cell-missing = { $place }: no stitch in the chart.
cell-chains = Round { $round }, corner chains.
cell-beyond = Round { $round }, beyond the corner: nothing is worked.
cell-round = Round { $round }, yarn { $id }, { $yarn }.
section-fromCorner = from the corner
section-repeat = repeat
section-toCorner = to the corner

# Names of edits
edit-stitches-b = { $stitches ->
    [one] 1 back-loop stitch
   *[other] { $stitches } back-loop stitches
    }
edit-stitches-p = { $stitches ->
    [one] 1 plain stitch
   *[other] { $stitches } plain stitches
    }
edit-stitches-l = { $stitches ->
    [one] 1 long stitch
   *[other] { $stitches } long stitches
    }
edit-stitches-c = { $stitches ->
    [one] 1 chain
   *[other] { $stitches } chains
    }
edit-yarnOfRounds = { $rounds ->
    [one] round { $first } in { $yarn }
   *[other] rounds { $first } to { $last } in { $yarn }
    }
edit-insertRound = insert round { $round }
edit-duplicateRounds = duplicate { $rounds ->
    [one] round { $first }
   *[other] rounds { $first } to { $last }
    }
edit-moveRounds = move { $rounds ->
    [one] round { $first } to { $to }
   *[other] rounds { $first } to { $last }, now { $to } and on
    }
edit-deleteRounds = delete { $rounds ->
    [one] round { $first }
   *[other] rounds { $first } to { $last }
    }
edit-insertColumn = insert column, { $section }
edit-deleteColumn = delete column, { $section }
edit-shift-on = shift the repeat { $columns ->
    [one] 1 column
   *[other] { $columns } columns
} on
edit-shift-back = shift the repeat { $columns ->
    [one] 1 column
   *[other] { $columns } columns
} back
edit-reverse = reverse the side
edit-evenOut = even out ragged sections
edit-reshape = side with { $fromCorner } from the corner, repeat of { $repeat }, { $toCorner } to the corner
edit-addYarn = add yarn { $yarn }
edit-changeYarn = change yarn { $yarn }
edit-removeYarn = remove yarn { $yarn }

# Dialogs
counts-base = A side of the base round: { $counts }.

# The round guide
guide-hook = Hook
guide-start = Start
guide-fromCorner = From the corner
guide-repeat = Repeat
guide-eachSide = Each side
guide-toCorner = To the corner
guide-corner = Corner
guide-seen = Look for
guide-back = Back layer
guide-back-matches = Round { $round } of the back layer has the same counts.
