# The sentences about yarn. Stitches are named by kind, never by a word that depends on the terms.

range = { $from } to { $to }

metres = { $metres } m
grams = { $grams } g
balls = { $balls ->
    [one] 1 ball
   *[other] { $balls } balls
    }

# $rounds: their numbers as a list; $count: how many they are
rounds = { $count ->
    [one] round { $rounds }
   *[other] rounds { $rounds }
    }

layer-FRONT = { $round }
layer-BACK = back { $round }
layer-backBase = back base
layer-JOINING = joining

kind-BACK_LOOP = back-loop stitches
kind-PLAIN = plain stitches
kind-LONG = long stitches
kind-CHAIN = chains
kind-TALL = tall stitches
kind-SLIP = joining stitches

# $tailCm, $tailInches: the length of one end; $margin: in per cent
amounts-counted = Each of the two ends of a round is counted as { $tailCm } cm ({ $tailInches } in). Totals include { $margin } % more, for differences of hand, joins and mistakes. The base round is not counted.
amounts-back = The back layer, its own base round and the joining round are counted in the yarn of the outermost round; any other yarn will do.
amounts-measured = The lengths come from the designer's own stitches.
amounts-estimated = These lengths are estimates: { $kinds }.
amounts-advice = Measure twenty of each kind, or buy an extra ball.

contrast-clear = { $inner } and { $outer } can be told apart: ratio { $ratio }, difference { $difference }.
contrast-low = { $inner } and { $outer } are hard to tell apart: ratio { $ratio }, difference { $difference }.
# $clearRatio: always enough; $leastRatio: never less; $leastDifference: what is needed between the two
contrast-limits = Two yarns can be told apart if the ratio of their luminances (WCAG) is { $clearRatio } or more, or { $leastRatio } or more with a colour difference (CIEDE2000) of { $leastDifference } or more. These limits are ours; the yarns themselves, side by side in daylight, decide.
contrast-nearest = The nearest colour for { $yarn } that can be told apart from all that it meets is { $colour }.
contrast-none = No colour for { $yarn } can be told apart from all that it meets.

left-unknown = No yarn in hand is entered.
left-enough = The yarn in hand is enough.
left-missing = { $yarn }: { $length } short.
left-round = { $rounds } in { $yarn }
left-otherYarns = With { $changes } it is enough, and the picture stays the same.
left-notEnough = No other choice among these yarns is enough and keeps the picture.
left-undecided = The search was ended before it found a way with other yarns; there may be one.
left-notProved = There may be a way that changes fewer rounds; the search was ended before it had tried them all.
left-margin = Lengths include the margin. A yarn with no length in hand counts as one that can be bought.

swap-can = { $rounds } ({ $yarn }) could be worked in { $yarns }.
swap-cannot = { $rounds } ({ $yarn }) cannot be worked in any other of these yarns.
swap-why = Rounds that are joined by long stitches, or that lie side by side in one yarn, change together. Neighbouring rounds stay in different yarns that can be told apart.

weightName-0 = Lace
weightName-1 = Super Fine
weightName-2 = Fine
weightName-3 = Light
weightName-4 = Medium
weightName-5 = Bulky
weightName-6 = Super Bulky
weightName-7 = Jumbo
weight-name = { $number } { $name }
# $hooks, $stitches: each a range
weight-usual = usually a hook of { $hooks }, { $stitches } plain stitches in 10 cm
weight-usualLace = usually a hook of { $hooks }, { $stitches } tall stitches in 10 cm
weight-editions = { $printed } (printed table) or { $web } (table on the web)
weight-mm = { $from } to { $to } mm
weight-fromMm = { $from } mm and larger
weight-upTo = up to { $to }

weight-of = Yarn of weight { $weight }: { $usual }.
weight-unusual = The hook of this border is a different one; go by the swatch.
hook-of = Hook: { $hook }.
hook-ofBack = Hook of the back layer: { $hook }.
hook-mm = { $mm } mm
hook-names = { $mm } mm ({ $names })
hook-us = US { $name }
hook-uk = UK { $name }
