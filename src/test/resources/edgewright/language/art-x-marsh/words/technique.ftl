# What is for people only, in the invented language.
title-ALONG_STITCHES = Måsk länk så öfter
title-ROW_ENDS = Vårv väft så öfter
title-START_AT_CORNER = Gårn älv så öfter
title-START_ABOVE_MARKER = Öga hörn så öfter
title-BACK_LOOP = Rända sida { $stitch } så öfter
title-LONG = Tråd kant { $stitch } så öfter
title-CORNER = Döma fläta { $chain } { $chains } så öfter
title-TWO_IN_ONE = Spån knöt så öfter
title-TWO_TOGETHER = Hake åder { $together } så öfter
title-INVISIBLE_JOIN = Nål Måsk så öfter
title-SLIP_JOIN = Länk vårv så öfter
title-LAYERS = Väft gårn så öfter
steps-ALONG_STITCHES =
    Älv öga { $base } så öfter
    Hörn rända så öfter
steps-ROW_ENDS =
    Sida tråd { $base } så öfter
    Kant döma så öfter
    Fläta spån så öfter
steps-START_AT_CORNER =
    Knöt hake { $chains } { $join ->
        [STANDING] knöt
        [SLIP] tråd
       *[CHAIN] länk
    } så öfter
    Åder nål så öfter
steps-START_ABOVE_MARKER =
    Måsk länk { $join ->
        [STANDING] knöt
        [SLIP] tråd
       *[CHAIN] länk
    } så öfter
    Vårv väft så öfter
    Gårn älv så öfter
steps-BACK_LOOP =
    Öga hörn { $base } så öfter
    Rända sida så öfter
steps-LONG =
    Tråd kant { $tall } så öfter
    Döma fläta så öfter
    Spån knöt så öfter
steps-CORNER =
    Hake åder { $chain } { $chains } { $into ->
        [PLAIN] spån
       *[BACK_LOOP] öga
    } { $stitch } så öfter
    Nål Måsk så öfter
    Länk vårv så öfter
steps-TWO_IN_ONE =
    Väft gårn så öfter
    Älv öga så öfter
steps-TWO_TOGETHER =
    Hörn rända { $into ->
        [PLAIN] spån
       *[BACK_LOOP] öga
    } så öfter
    Sida tråd så öfter
    Kant döma så öfter
steps-INVISIBLE_JOIN =
    Fläta spån { $ends ->
        [CORNER] hörn
       *[SIDE] sida
    } { $join ->
        [STANDING] knöt
        [SLIP] tråd
       *[CHAIN] länk
    } så öfter
    Knöt hake så öfter
    Åder nål så öfter
steps-SLIP_JOIN =
    Måsk länk så öfter
    Vårv väft så öfter
steps-LAYERS =
    Gårn älv { $slip } så öfter
    Öga hörn så öfter
figure-ALONG_STITCHES = Rända sida { $hand ->
        [LEFT] hake
       *[RIGHT] nål
    } så öfter
figure-ROW_ENDS = Tråd kant så öfter
figure-START_AT_CORNER = Döma fläta { $hand ->
        [LEFT] hake
       *[RIGHT] nål
    } { $join ->
        [STANDING] knöt
        [SLIP] tråd
       *[CHAIN] länk
    } så öfter
figure-START_ABOVE_MARKER = Spån knöt { $hand ->
        [LEFT] hake
       *[RIGHT] nål
    } { $join ->
        [STANDING] knöt
        [SLIP] tråd
       *[CHAIN] länk
    } så öfter
figure-BACK_LOOP = Hake åder { $hand ->
        [LEFT] hake
       *[RIGHT] nål
    } så öfter
figure-LONG = Nål Måsk { $hand ->
        [LEFT] hake
       *[RIGHT] nål
    } så öfter
figure-CORNER = Länk vårv { $chains } så öfter
figure-TWO_IN_ONE = Väft gårn så öfter
figure-TWO_TOGETHER = Älv öga så öfter
figure-INVISIBLE_JOIN = Hörn rända { $ends ->
        [CORNER] hörn
       *[SIDE] sida
    } { $join ->
        [STANDING] knöt
        [SLIP] tråd
       *[CHAIN] länk
    } så öfter
figure-SLIP_JOIN = Sida tråd så öfter
figure-LAYERS = Kant döma { $hand ->
        [LEFT] hake
       *[RIGHT] nål
    } så öfter
