# The sentences of a written pattern that are for people only. What the reader reads stands in phrases.ftl, what a stitch is called
# in the folders of the dialects.

terms-which = { $terms }. In other terms the same abbreviation can mean another stitch.

needs-weight = Weight of yarn
# As the Craft Yarn Council numbers them, with what the UK calls them: https://thecrochetcrowd.com/5-bulky-weight-yarn-projects
needs-weight-0 = 0 Lace
needs-weight-1 = 1 Super Fine (UK: 4 ply)
needs-weight-2 = 2 Fine (UK: 5 ply)
needs-weight-3 = 3 Light (UK: DK or 8 ply)
needs-weight-4 = 4 Medium (UK: aran or 10 ply)
needs-weight-5 = 5 Bulky (UK: chunky or 12 ply)
needs-weight-6 = 6 Super Bulky
needs-weight-7 = 7 Jumbo
needs-amount = Length of { $id }
# Numbers of each size, the first outside the brackets
# $terms of these messages: where they are American, inches and yards come first
needs-length = { $terms ->
    [US] { $yards }~yd~or~{ $metres }~m
   *[UK] { $metres }~m~or~{ $yards }~yd
    }
needs-lengthInBalls = { $lengths }, { $balls } of { $terms ->
    [US] { $ballYards }~yd~({ $ballMetres }~m)
   *[UK] { $ballMetres }~m~({ $ballYards }~yd)
    } and { $ballGrams }~g
needs-balls = { $balls ->
    [one] 1 ball
   *[other] { $balls } balls
    }
needs-ballsEach = { $balls } balls
needs-examples = Lengths are for the two examples in the set-up, with four equal sides.
needs-counted = Lengths include { $terms ->
    [US] { $tailInches }~in~({ $tailCm }~cm)
   *[UK] { $tailCm }~cm~({ $tailInches }~in)
    } for each end and { $margin }% to spare, but not the base round on the piece.
needs-backYarn = All of the back layer and the joining round are in the yarn of the outermost round.
needs-estimated = They are estimates: measure your own stitches, or buy a ball more.
needs-hook = Hook
needs-backHook = Hook for the back
needs-mm = { $mm } mm
needs-hookNames = { $mm } mm ({ $names })
needs-hookUs = US { $name }
needs-hookUk = UK { $name }
needs-swatch = { $swatchStitches } stitches, { $swatchRounds } rounds to { $terms ->
    [US] 4~in~(10~cm)
   *[UK] 10~cm~(4~in)
    } of border
needs-width = Border width
needs-cmAndInches = about { $terms ->
    [US] { $inches }~in~({ $cm }~cm)
   *[UK] { $cm }~cm~({ $inches }~in)
    }
needs-finished = Finished size
needs-finishedOf = Size { $size }
needs-finishedExample = Example of { $stitches } sts
needs-size = { $terms ->
    [US] about { $acrossInches }~by~{ $downInches }~in ({ $across }~by~{ $down }~cm); the piece alone { $pieceAcrossInches }~by~{ $pieceDownInches }~in ({ $pieceAcross }~by~{ $pieceDown }~cm)
   *[UK] about { $across }~by~{ $down }~cm ({ $acrossInches }~by~{ $downInches }~in); the piece alone { $pieceAcross }~by~{ $pieceDown }~cm ({ $pieceAcrossInches }~by~{ $pieceDownInches }~in)
    }
needs-contrast = Photograph the yarns side by side in black and white: if the greys are close, the pattern will not show.
needs-skill = Skill
needs-anyHook = A hook that gives you the same { $tension } as the piece.
needs-otherHook = If your { $tension } is different, change the hook.
# $markers: how many are for the starts of rounds
needs-needle-INVISIBLE = { $markers ->
    [0] A blunt needle for joins and ends, and stitch markers if you like.
    [one] A blunt needle for joins and ends, and a stitch marker for the start of the rounds.
   *[other] A blunt needle for joins and ends, and { $markers } stitch markers for the starts of the rounds.
    }
needs-needle-SLIP = { $markers ->
    [0] A blunt needle for the ends, and stitch markers if you like.
    [one] A blunt needle for the ends, and a stitch marker for the start of the rounds.
   *[other] A blunt needle for the ends, and { $markers } stitch markers for the starts of the rounds.
    }

direction-LEFT = The right side always faces you; never turn. This pattern is for makers who crochet with the left hand: you travel clockwise: top, right, bottom, left. The border is a mirror image of one worked with the right hand.
direction-RIGHT = The right side always faces you; never turn. With the hook in your right hand you travel anticlockwise: top, left, bottom, right. With the left hand you travel clockwise, and the border is a mirror image.
sides-all = A round is written for one side, from the corner just turned; it ends with the next corner. All four sides are alike.
sides-others = The other rounds are written for one side, from the corner just turned; they end with the next corner. All four sides are alike.
piece-note = In round~{ $round } each side has words of its own, which give it the number of stitches that it needs: count each side before that round, and again after it. A piece with another number on any side needs words of its own.
notes-number = '3~{ $stitch }' means one { $stitch } in each of the next 3 stitches, never 3 in one; but '3~{ $chain }' means 3 chains.
notes-group = Work from the asterisk (*) to 'rep' as often as it fits before the last stitches or the corner, as the round says: not at all, once, or more often. It always fits exactly.
notes-table = The rounds stand in a table, a row each. On each side work what stands under 'From the corner', then the repeat as far as it says (not at all, once, or more often; it always comes out even), then what stands under 'To the corner'; then make the corner. 'None' means that nothing is worked there. Words that run across a row are worked as they say.
notes-brackets = Work what brackets hold as often as they say: '(1~{ $stitch }, 1~{ $other }) twice' is 1~{ $stitch }, 1~{ $other }, 1~{ $stitch }, 1~{ $other }.
notes-every = 'In every st' includes the corner chains: the first and the last stitch of a side go into them.
notes-last = 'To last 4~sts' means: until 4 stitches of the side are left.
corner-1 = Corner of 1~ch: the last stitch of a side goes into the corner chain of the round below; make 1~ch; the first stitch of the next side goes into the same corner chain. { growth }
corner-2 = Corner of 2~ch: the last stitch of a side goes into the first chain of the corner in the round below; make 2~ch; the first stitch of the next side goes into the last chain of the same corner. { growth }
corner-3 = Corner of 3~ch: the last stitch of a side goes into the first chain of the corner in the round below; make 3~ch; the first stitch of the next side goes into the last chain of the same corner, and the middle chain stays empty. { growth }
# Where a figure shows it. $techniques: the heading under which it stands
shown-corner = Corner of { $chains }~ch: the last stitch of a side, the chains, and the first stitch of the next side, as '{ $techniques }' shows. { growth }
growth = These two stitches belong to their sides, in the words and in every count, so each side grows by 2 stitches a round.
# Which loops of a corner chain a stitch takes
cornerLoops-back = A { $stitch } takes the back loop of the corner chain and leaves its front loop free.
cornerLoops-plain = A { $stitch } takes both loops of the corner chain.
cornerLoops-both = A { $back } takes the back loop of the corner chain and leaves its front loop free; a { $plain } takes both loops.
cornerLoops-long = A { $stitch } that is the second stitch of a side, or the last but one, goes into the front loop of a corner chain two rounds below: the chain that holds the stitch it covers.
changes-begin = Begin round~{ $round } with the first stitch of the top edge, wherever other rounds begin: join the yarn in the corner chain where that stitch goes.
changes-two = '2 { $stitch } in the next st' makes two stitches out of one.
changes-oneAndOne = Two stitches 'in the next st' make two stitches out of one.
notes-chain = A chain inside a side counts as one stitch. In the next round work into it as into a stitch.

setUp-what = The base round is round 0: { $stitch } through both loops all round the piece, with chains at each of the four corners. Any yarn of the same weight will do; it shows as a thin line inside the border.
setUp-pickUp = Work one in each stitch of the piece; along the ends of rows work one for each row of { $stitch }, two where a row is twice as high and three where it is three times as high. If the edge waves, work fewer; if it draws in, work more.
setUp-examples = All counts are for one side. Numbers such as { $numbers } are two examples, the larger in brackets.
setUp-names = Sizes: { $names }. Numbers stand in this order, the first outside the brackets; a number alone is for all sizes.
setUp-sizes = The first number is for the first size, those in brackets for the others in their order; a number alone is for all sizes.
setUp-sides = Every number of the multiple comes out even. Give opposite sides the same number, so that the piece lies flat; top and bottom may differ from left and right.
# $markers: 1, or 2 in turn
setUp-markers = { $markers ->
    [1] Put the marker in when the base round is done.
   *[other] Put the markers in when the base round is done; every round starts above its own.
    } Count from the corner just turned: the corner chain (of several the one next to this side) is number 1, the stitch after it number 2. Where a marker is hard to see, move it up into the stitch straight above it.
setUp-right = If a side has another number, start anyway: count every side in { $counting }, work some stitches more (two in one stitch) or fewer (two together) in { $changing }, spread evenly and away from the corners, and count again in { $checking }. There a side must have { $fits }.
setUp-rightAtOnce = If a side has another number, put it right before round 1: work the base round again with some stitches more or fewer, spread evenly and away from the corners.
# What a side must have when its number was put right
setUp-fitsMultiple = a { $multiple } stitches
setUp-fits = the number of the~base~round and 2 more for every round since
setUp-thatRound = that round

roundNamed-base = the~base~round
roundNamed-number = round~{ $round }

joining-atCorner = Begin round 1 with the first stitch after any corner.
# Where a figure shows it. $techniques: the heading under which it stands
join-shown = Join the yarn there as '{ $techniques }' shows{ $join ->
    [STANDING] .
   *[CHAIN] ; the joining chain is never counted.
    [SLIP] ; neither the slip stitch nor its chain is ever counted.
    }
joining-CHAIN = Join the yarn with one chain in the back loop of the corner chain where that stitch goes. This chain is not a stitch and is never counted. Work the first stitch into the same corner chain.
joining-SLIP = Join the yarn with a slip stitch in the back loop of the corner chain where that stitch goes, and make one chain. Neither is a stitch or is ever counted. Work the first stitch into the same corner chain.
joining-STANDING = Begin with a slip knot on the hook, and work that stitch into its corner chain as a standing stitch. It counts as any other.
joining-apart = Begin each later round at the corner diagonally opposite the last start, so that the ends lie apart.
joining-aboveMarker = Every round starts above its marker: join the yarn in the stitch of the round below that stands straight above the marked one, one stitch further from the corner in every round.
aboveMarker-shown = Every round starts above its marker, as '{ $techniques }' shows: one stitch further from the corner in every round.{ $join ->
    [STANDING] { "" }
   *[CHAIN] { " " }The joining chain is never counted; a long first stitch covers it.
    [SLIP] { " " }The slip stitch and its chain are never counted; a long first stitch covers them.
    }
joining-pastMarker = 'Start 1 st after the marker' means: join in the stitch that comes after the one above the marker, or as many stitches after it as the round says. A long stitch or a chain cannot close a round, so the start moves on.
joinAlong-CHAIN = Join it there with one chain, in the back loop; this chain is not a stitch and is never counted. The first stitch is worked at the next stitch along, the one after the chain; a long one covers it.
joinAlong-SLIP = Join it there with a slip stitch in the back loop, and make one chain; neither is a stitch or is ever counted. The first stitch is worked at the next stitch along, the one after the chain; a long one covers it.
joinAlong-STANDING = Begin with a slip knot on the hook: the first stitch of the round is a standing stitch in the next stitch along, the one after that stitch. It counts as any other.
joining-around = Work along the side to its corner, round the piece, and back to the start: the last stitch goes into the stitch where the yarn was joined.
joining-mark = The ^ in a round stands where it starts: begin with what follows it; on the other sides ignore it.
joining-markInGroup = After an asterisk it counts in one repeat only, where it comes straight after the stitch in which you joined: begin there, finish that repeat, then go on as the round says; on the way back to the start work up to the ^ of the same repeat.
joining-markInEvery = Before a stitch that is worked 'in every st' it means: begin with that stitch above the marker.
joining-noMark = A round without ^ is the same all along, so it needs none.
joining-someAtCorner = A round that says 'Begin at a corner' begins with the first stitch after any corner.
closeAt-CORNER = Close every round after its last corner
closeAt-SIDE = Close every round after its last stitch
# $where: closeAt; the end is pulled out of the last chain, or along a side out of the last stitch
close-INVISIBLE = { $where }, with an invisible join. Cut the yarn, pull the end out of the last { $last } and thread the needle with it. { $join ->
    [STANDING] Go under both top loops of the second stitch of the round, and back into the top of the last { $last }: the new loop lies over the first stitch and takes the place of its top.
    [SLIP] Pass over the slip stitch and the chain, go under both top loops of the first counted stitch, and go back into the top of the last { $last }.
   *[CHAIN] Pass over the joining chain, go under both top loops of the first counted stitch, and go back into the top of the last { $last }.
    } Pull until the new loop has the size of a stitch. { $join ->
    [STANDING] This loop is not counted again.
   *[CHAIN] This loop is not counted, and no stitch goes into it.
    }
# Where a figure shows the join. $techniques: the heading under which it stands
close-shown = { $where }, with an invisible join, as '{ $techniques }' shows; its loop is not counted.
close-SLIP = { $where }, with a slip stitch in the top of the first counted stitch, which is not counted. Cut the yarn and fasten off.
close-lastChain = chain
close-lastStitch = stitch
# For a page that tells a round by itself. $number: the stitch of the round below; $sts: how many after the marker
start-above = Above the marker on the { $edge }: in stitch { $number } of the round below, with the corner chain as number 1.
start-past = { $sts } after the marker on the { $edge }: in stitch { $number } of the round below, with the corner chain as number 1.
joining-ends = Leave both ends at the back, where the round began.
joining-closeSomeAtCorner = A round that begins at a corner is closed in the same way after its last corner; there the last chain stands for the last stitch.

finishing-endsBetween = Weave in the ends of the back layer and of the joining round, behind stitches of their own yarn.
finishing-ends = Weave in each end at the back, behind stitches of its own yarn.
finishing-block = Block the piece when all ends are in: pin it out with the corners square and the sides straight, dampen it and let it dry. Follow the ball band: heat flattens acrylic, and hot water felts wool.

backWhat-all = The back layer lies behind the front and hides its ends. Work it when the front is done, with the wrong side of the piece facing you, in the yarn of the outermost round or in any other of the same weight. It stands on a base round of its own: { $stitch } through both loops into the same places of the edge, behind the base round of the front, with the same corners and the same number of stitches on each side; if you corrected the front, take the number that its base round should have had.
backWhat-piece = The back layer lies behind the front and hides its ends. Work it when the front is done, with the wrong side of the piece facing you, in the yarn of the outermost round or in any other of the same weight. It stands on a base round of its own: { $stitch } through both loops into the same places of the edge, behind the base round of the front, with the same corners and with the right number of stitches from the beginning, as given here.
back-smallerHook = Use a hook one size smaller than for the front.
backCorner-1 = In the back layer the stitches named before and after the chain of a corner all go into the corner chain of the round below. They are the last and the first of their sides in every count, and stitches like all others in the next round.
backCorner-2 = In the back layer the stitches named before the chains of a corner all go into the first chain of the corner in the round below, those after them into its last chain. They are the last and the first of their sides in every count, and stitches like all others in the next round.
backCorner-3 = In the back layer the stitches named before the chains of a corner all go into the first chain of the corner in the round below, those after them into its last chain. They are the last and the first of their sides in every count, and stitches like all others in the next round. The middle chain stays empty.
back-begin = Begin a back round after the chains of any corner: join the yarn in the corner chain of the round below where the first stitch goes. In a round of { $stitch }, work 3 { $chain } there for height; they count as the first { $stitch } after the chains of that corner. Any other round begins with one chain, which is not counted. The round ends with the chains of the same corner; close the round with an invisible join.
back-beginLow = Begin a back round after the chains of any corner: join the yarn with one chain in the corner chain of the round below where the first stitch goes; that chain is not counted. The round ends with the chains of the same corner; close the round with an invisible join.
back-join = Join the layers when both have their last round. Before that, weave in a little of each end of the front behind stitches of its own yarn; the rest stays hidden between the layers. Lay the layers wrong sides together with the front facing you, corner on corner; each stitch of the front has a stitch of the back behind it. The back loops are the two on the inside, between the layers. Take the hook of the front and work loosely; begin with the first stitch after any corner, and close the round with an invisible join.

caption-STITCHES = Stitches on a side, corner chains not counted.
caption-WITH_CHAINS = Stitches on a side with one corner chain at each end.
examples-caption = { $caption } Each column is an example of a side, named after its stitches in the base round.
counts-round = Round
counts-yarn = Yarn
counts-base = base round
example = { $stitches } sts
counts-ofSize = { $size }: { $sides }
size-number = Size { $size }
counts-each = Each side
counts-topBottom = Top, bottom
counts-leftRight = Left, right
column-TOP = Top
column-LEFT = Left
column-BOTTOM = Bottom
column-RIGHT = Right

rep = rep
rep-meaning = repeat
st-both = st, sts
st-meaning = stitch, stitches
start-mark-meaning = where the round starts, above the marker

# $last: the last round before the changing round
piece-before = { $last ->
    [1] Work round~1 on the sides as they are.
   *[other] Work rounds~1~to~{ $last } on the sides as they are.
    }
