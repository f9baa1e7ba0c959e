# What is for people only, in the invented language.
terms-which = Måsk länk { $terms } så öfter
needs-hook = Vårv väft så öfter
needs-mm = Gårn älv { $mm } så öfter
needs-swatch = Länk öga { $swatchStitches } { $swatchRounds } { $terms ->
    [US] tum
   *[other] mått
    } så öfter
needs-width = Hörn rända så öfter
needs-cmAndInches = Sida gårn { $cm } { $inches } { $terms ->
    [US] tum
   *[other] mått
    } så öfter
direction-LEFT = Tråd sida så öfter
direction-RIGHT = Kant döma så öfter
sides-all = Väft vårv så öfter
sides-others = Fläta tråd så öfter
piece-note = Döma spån { $round } så öfter
notes-number = Rända hörn { $stitch } { $chain } så öfter
notes-table = Väft länk döma 'öga' så öfter
notes-group = Knöt fläta så öfter
notes-brackets = Hake { $stitch } ock { $other } så öfter
notes-every = Åder nål så öfter
notes-last = Älv knöt så öfter
corner-1 = Måsk länk { growth } så öfter
corner-2 = Vårv väft { growth } så öfter
corner-3 = Gårn älv { growth } så öfter
growth = Länk öga så öfter
changes-begin = Sida gårn { $round } så öfter
changes-two = Öga kant { $stitch } så öfter
changes-oneAndOne = Nål åder så öfter
notes-chain = Kant döma så öfter
setUp-what = Rända hörn { $stitch } så öfter
setUp-examples = Väft { $numbers } vårv så öfter
setUp-names = Fläta { $names } tråd så öfter
setUp-sizes = Döma spån så öfter
setUp-sides = Knöt fläta så öfter
setUp-fits = Måsk spån
setUp-fitsMultiple = Hake { $multiple }
setUp-right = Spån måsk { $counting } { $changing } { $checking } { $fits } så öfter
setUp-rightAtOnce = Åder nål så öfter
setUp-thatRound = Älv knöt så öfter
roundNamed-base = Måsk länk så öfter
roundNamed-number = Vårv väft { $round } så öfter
joining-atCorner = Gårn älv så öfter
joining-aboveMarker = Länk öga så öfter
joining-pastMarker = Öga länk så öfter
joining-mark = Kant öga så öfter
joining-markInGroup = Döma kant så öfter
joining-markInEvery = Kant väft så öfter
joining-noMark = Väft nål så öfter
setUp-markers = Märk { $markers } så öfter
start-above = Sida { $edge } mäsk { $number } så öfter
start-past = Sida { $edge } mäsk { $number } länk { $sts } så öfter
start-mark-meaning = Rända sida så öfter
joining-someAtCorner = Hörn rända så öfter
joining-closeSomeAtCorner = Nål åder så öfter
finishing-endsBetween = Tråd sida så öfter
finishing-ends = Kant döma så öfter
backWhat-all = Väft vårv { $stitch } så öfter
backWhat-piece = Fläta tråd { $stitch } så öfter
back-smallerHook = Döma spån så öfter
backCorner-1 = Rända hörn så öfter
backCorner-2 = Knöt fläta så öfter
backCorner-3 = Spån måsk så öfter
back-begin = Åder nål { $stitch } { $chain } så öfter
back-beginLow = Älv knöt så öfter
back-join = Måsk länk så öfter
caption-STITCHES = Vårv väft så öfter
caption-WITH_CHAINS = Gårn älv så öfter
examples-caption = Länk öga { $caption } så öfter
counts-round = Hörn rända så öfter
counts-yarn = Sida gårn så öfter
counts-base = Öga kant så öfter
example = Nål åder { $stitches } så öfter
counts-ofSize = { $size } · { $sides }
size-number = Spån { $size }
counts-each = Tråd sida så öfter
counts-topBottom = Kant döma så öfter
counts-leftRight = Väft vårv så öfter
column-TOP = Fläta tråd så öfter
column-LEFT = Döma spån så öfter
column-BOTTOM = Rända hörn så öfter
column-RIGHT = Knöt fläta så öfter
rep = åter
rep-meaning = Återtag så öfter
st-both = Spån måsk så öfter
st-meaning = Åder nål så öfter
piece-before = Älv knöt { $last } så öfter
needs-weight = Vårv Knöt så öfter
needs-weight-0 = Fläta åder så öfter
needs-weight-1 = Tråd Döma så öfter
needs-weight-2 = Döma öga så öfter
needs-weight-3 = Spån Väft så öfter
needs-weight-4 = Rända spån så öfter
needs-weight-5 = Hörn nål så öfter
needs-weight-6 = Knöt vårv så öfter
needs-weight-7 = Öga Rända så öfter
needs-amount = Nål kant { $id } så öfter
needs-length = Kant Fläta { $metres } { $yards } { $terms ->
    [US] tum
   *[other] mått
    } så öfter
needs-lengthInBalls = Älv hörn { $lengths } { $balls } { $ballMetres } { $ballYards } { $ballGrams } { $terms ->
    [US] tum
   *[other] mått
    } så öfter
needs-balls = Åder älv { $balls } så öfter
needs-ballsEach = Väft tråd { $balls } så öfter
needs-examples = Vårv Knöt så öfter
needs-counted = Fläta åder { $tailCm } { $tailInches } { $margin } { $terms ->
    [US] tum
   *[other] mått
    } så öfter
needs-backYarn = Tråd Döma så öfter
needs-estimated = Döma öga så öfter
needs-backHook = Spån Väft så öfter
needs-hookNames = Rända spån { $mm } { $names } så öfter
needs-hookUs = Hörn nål { $name } så öfter
needs-hookUk = Knöt vårv { $name } så öfter
needs-finished = Öga Rända så öfter
needs-finishedOf = Nål kant { $size } så öfter
needs-finishedExample = Kant Fläta { $stitches } så öfter
needs-size = Älv hörn { $across } { $down } { $acrossInches } { $downInches } { $pieceAcross } { $pieceDown } { $pieceAcrossInches } { $pieceDownInches } { $terms ->
    [US] tum
   *[other] mått
    } så öfter
needs-skill = Åder älv så öfter
needs-anyHook = Väft tråd { $tension } så öfter
needs-otherHook = Vårv Knöt { $tension } så öfter
needs-needle-INVISIBLE = Fläta åder { $markers } så öfter
needs-needle-SLIP = Tråd Döma { $markers } så öfter
cornerLoops-both = Kant { $back } länk { $plain } så öfter
shown-corner = Öga { $chains } { $techniques } { growth } så öfter
join-shown = Hörn { $techniques } { $join ->
    [STANDING] tum
   *[other] mått
    } så öfter
aboveMarker-shown = Rända { $techniques } { $join ->
    [STANDING] tum
   *[other] mått
    } så öfter
cornerLoops-back = Döma öga { $stitch } så öfter
cornerLoops-plain = Spån Väft { $stitch } så öfter
cornerLoops-long = Rända spån { $stitch } så öfter
setUp-pickUp = Hörn nål { $stitch } så öfter
joining-CHAIN = Knöt vårv så öfter
joining-SLIP = Öga Rända så öfter
joining-STANDING = Nål kant så öfter
joining-apart = Kant Fläta så öfter
joinAlong-CHAIN = Älv hörn så öfter
joinAlong-SLIP = Åder älv så öfter
joinAlong-STANDING = Väft tråd så öfter
joining-around = Vårv Knöt så öfter
closeAt-CORNER = Fläta åder så öfter
closeAt-SIDE = Tråd Döma så öfter
close-INVISIBLE = Döma öga { $where } { $join ->
    [STANDING] står
   *[other] ligger
    } { $last } så öfter
close-shown = Hake väft { $where } { $techniques } så öfter
close-SLIP = Spån Väft { $where } så öfter
close-lastChain = Rända spån så öfter
close-lastStitch = Hörn nål så öfter
joining-ends = Knöt vårv så öfter
finishing-block = Öga Rända så öfter
needs-contrast = Väft spån så öfter
