# Sentences about findings and remedies.

# Findings, by the id of their rule. Each says what is wrong and why hands cannot do it.
rule-no-round-below = A long stitch drops two rounds down, and under round 1 there is only the base round: the hook has no loop to reach for.
rule-past-corner = A long stitch cannot be the { $corner } stitch of a side: it stands on a corner chain, and under that chain there is nothing of this side for the hook to reach.
rule-covered-loop = The stitch directly below, in round { $below }, is long too: it lies in front of the loop that this one needs, so the hook cannot get at it.
rule-used-loop = The stitch directly below, in round { $below }, is plain: it is worked through both loops of the stitch it stands on in { $landing ->
    [0] the base round
   *[other] round { $landing }
    }, so no front loop is left to drop into.
rule-lands-on-long = The stitch two rounds below, in round { $landing }, is long too: its loose top gives way under a second one, and this chart does not allow long stitches to be stacked.
rule-lands-on-chain = There is a chain two rounds below, in round { $landing }: it hangs over a gap, with no stitch under it to hold a long stitch down.
rule-lands-on-corner-chain = The stitch next to the { $corner } one of a side lands in a corner chain of { $landing ->
    [0] the base round
   *[other] round { $landing }
    }, and this chart keeps its corner chains free: a long stitch there pulls the corner together.
rule-chain-at-corner = A chain cannot be the { $corner } stitch of a side: with no stitch worked into the corner below, nothing holds the corner there.
rule-ragged-section = This section has { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    } where its round needs { $expected }: the stitches after it have none to stand on in their own fabric column, so no stitch can be judged.
rule-unclosed-side = A side of { $stitches } stitches in the base round does not come out even, since it is not a multiple of { $multiple }{ $plus ->
    [0] {""}
   *[other] {" "}plus { $plus }
    }: the maker comes to the corner before the repeat is whole, { $tooMany ->
    [0] {""}
   *[other] { $tooMany } too many or{" "}
    }{ $tooFew } too few.
rule-other-yarn = This long stitch in { $own } lands on round { $landing }, which is worked in { $landingYarn }: the hook can pull it down there, but it covers the wrong colour and does not land on its own.
rule-deep-gap = A chain directly above a chain, in round { $below }, leaves a hole two rounds high: nothing between holds its edges, and the hook catches in it.
rule-loose-run = { $longs ->
    [0] Long stitches stand side by side for as long as the repeat is worked
   *[other] { $longs } long stitches stand side by side
    }, where this chart allows { $allowed }: nothing holds the stitches behind them, and they hang loose at the back.
rule-low-contrast = { $inner } and { $outer } meet here and are hard to tell apart: eyes cannot follow the pattern, and hands cannot see which loop to take.
rule-unseen-long = The stitch directly below, in round { $below }, is worked in { $yarn } too: the long stitch covers it with its own colour, so nothing of it is seen.

# Remedies, by their ids. Each says what is done, as on a button.
# $squares: how many squares of the fabric then show another colour
remedy = { $action } ({ $squares ->
    [0] no square changes colour
    [one] 1 square changes colour
   *[other] { $squares } squares change colour
    })
remedy-allow-corner-chains = Allow long stitches in corner chains in this chart
remedy-allow-run = Let up to { $longs } long stitches stand side by side in this chart
remedy-allow-stacking = Allow long stitches on long stitches in this chart
remedy-back-loop-below = Make the stitch below, in round { $below }, a back-loop stitch
remedy-back-loop-two-below = Make the stitch two below, in round { $landing }, a back-loop stitch
remedy-break-run = Break the run up with { $breaks ->
    [one] a back-loop stitch
   *[other] { $breaks } back-loop stitches
    }
remedy-change-corners = Make the corner sections { $fromCorner } and { $toCorner } stitches long in the base round
remedy-change-yarn = Work round { $round } in { $yarn }
remedy-darken-yarn = Make { $yarn } darker: { $colour }
remedy-even-out = Make this section { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    } long, at the corner
remedy-even-out-all = Give all { $sections } sections the right length for their rounds
remedy-fill-in = Make the chain a back-loop stitch
remedy-lighten-yarn = Make { $yarn } lighter: { $colour }
remedy-move = Move the long stitch to round { $round }, in the same fabric column
remedy-take-out = Take the long stitch out and work a back-loop stitch
remedy-take-out-of-run = Take the long stitch and { $breaks } more of its run out and work back-loop stitches

# Where a finding is, by what is given
where-round = Round { $round }
where-section = Round { $round }, { $section }
where-side = The { $side }
where-stitch = Round { $round }, { $section }, stitch { $stitch }

# Values in sentences
corner-NEXT = last
corner-START = first
section-FROM_CORNER = from the corner
section-REPEAT = repeat
section-TO_CORNER = to the corner
side-BOTTOM = bottom edge
side-LEFT = left-hand edge
side-RIGHT = right-hand edge
side-TOP = top edge
yarn = { $name } ({ $id })

# Names of the rules, by their ids
title-chain-at-corner = Chain at the corner
title-covered-loop = Loop behind a long stitch
title-deep-gap = Deep gap
title-lands-on-chain = Lands on a chain
title-lands-on-corner-chain = Lands in a corner chain
title-lands-on-long = Lands on a long stitch
title-loose-run = Loose run
title-low-contrast = Yarns hard to tell apart
title-no-round-below = No round to land on
title-other-yarn = Lands on another yarn
title-past-corner = Past the corner
title-ragged-section = Section of the wrong length
title-unclosed-side = Side does not come out even
title-unseen-long = Long stitch not seen
title-used-loop = Loop used up
