# Yarns
yarns-title = Yarn: amounts and contrast
yarns-stop = C&ancel
yarns-base = Base round: { $topAndBottom } and { $leftAndRight } stitches
yarns-amounts = What you need of each yarn
yarns-rounds-table = Length of each round
yarns-change = &Change the yarn…
yarns-measure = &Measure stitches…
yarns-tab-amounts = Amounts
yarns-tab-rounds = Round by round
yarns-tab-contrast = Contrast
yarns-tab-left = In hand
yarns-column-yarn = Yarn
yarns-column-needed = Needed
yarns-column-grams = Weight
yarns-column-balls = Balls
yarns-column-inHand = In hand
yarns-column-missing = Missing
yarns-column-round = Round
yarns-column-stitches = Stitches
yarns-column-metres = Length
yarns-column-soFar = Of this yarn so far
yarns-greyStrip = The rounds in colour and in grey
yarns-greyStrip-tip = Innermost round at the left. Where two neighbours have nearly the same grey, the pattern gets lost.
yarns-grey = Round { $round }: { $yarn }, { $percent } % grey.
yarns-recolour = Give { $yarn } the colour { $colour }
yarns-swap = &Work the rounds in these yarns
yarns-swaps = Rounds that could take another yarn
measure-title = Measure stitches
measure-accept = &Keep
measure-backLoop = 20 &back-loop stitches, cm
measure-plain = 20 &plain stitches, cm
measure-long = 20 &long stitches, cm
measure-chain = 20 c&hains, cm
measure-tall = 20 &tall stitches of a back layer, cm
measure-slip = 20 &joining stitches, cm
measure-explain = Work { $stitches } stitches of a kind with your own yarn and hook, unravel them and measure the yarn. Whatever is left empty is estimated.
measure-objection = '{ $typed }': expected centimetres above 0, or nothing.
yarn-name = &Name
yarn-colour = &Colour
yarn-id = &Letter
yarn-ballMetres = &Metres in a ball
yarn-ballGrams = &Grams in a ball
yarn-inHand = Metres &in hand
yarn-objection-number = '{ $typed }': expected a number from 0 to 999,999, or nothing.
yarn-objection-ball = Give both the metres and the grams of a ball, each above 0, or neither.
yarn-explain = The letter stands for the yarn on the chart and in the file. It can have up to eight letters or digits.
yarn-objection-id = The letter of a yarn is 1 to { $most } letters or digits.
yarn-objection-taken = Another yarn already has the letter { $letter }.
addYarn-title = Add a yarn
addYarn-accept = &Add
changeYarn-title = Change the yarn
changeYarn-accept = C&hange

# Names of edits
edit-swapYarns = { $rounds ->
    [one] work 1 round in another yarn
   *[other] work { $rounds } rounds in other yarns
    }
edit-measure = measure stitches
