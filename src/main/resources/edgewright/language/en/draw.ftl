# Words in pictures.
base = base
direction = direction of work
repeat = repeat, { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }
surplus = +{ $stitches }

legend-stitch-BACK_LOOP = back-loop stitch
legend-stitch-PLAIN = plain stitch, through both loops
legend-stitch-LONG = long stitch
legend-stitch-CHAIN = chain over one stitch
legend-corner = corner: { $chains ->
    [one] 1 chain
   *[other] { $chains } chains
    } in the yarn of the round
legend-base = base round, already on the piece
# Beside a sample with a dot where the stitch lands. $stitch: the long stitch
legend-lands = { $stitch }: into the free front loop of the stitch two rounds below, at the dot.
legend-lands-corner = Over a corner: into the front loop of the corner chain that holds the stitch it covers.
# A square without a mark, where each long stitch is one sign
# $stitch: the stitch that is covered
legend-bare = no sign: { $stitch } that a long stitch covers
legend-repeat = a repeat begins or ends
# In one ink, where there are three yarns or more
legend-area = bold outline: where the yarn that shows changes
legend-tenth = every 10 stitches from the corner
# $below: the round that is covered, worked in yarn $worked; $above: the round of the long stitch, in yarn $shown
legend-example = Round { $below } is worked in yarn { $worked }. Where it shows { $shown }, a long stitch of round { $above } lies over it.
legend-missing = stitch missing
legend-yarn = { $yarn }
legend-error = cannot be worked; see the list
legend-warning = needs a look; see the list

corner-title = { $title }: chart of one corner
# $shown: how often the repeat is drawn on an arm; $stitches: of the repeat
corner-description = One corner of the border { $title }, { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }. The side worked to the corner shows { $shown } and the stitches to the corner, the side worked from the corner the stitches from it and { $shown }. The repeat has { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }.
corner-repeats = { $repeats ->
    [one] 1 repeat
   *[other] { $repeats } repeats
    }
# Under the strip of one side: its parts beside the repeat
side-from = from the corner just turned
side-to = to the next corner
# Over the numbers that count to the next corner
side-back = counted back from this corner
side-title = { $title }: chart of one side
# $stitches: of the repeat
side-description = One side of the border { $title } from corner to corner, { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, each a row in the direction of work, the first lowest. The repeat, drawn once, has { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }.
border-title = { $title }: the whole border
border-description = The whole border { $title } around a piece, seen from the right side when it is done.
legend-title = { $title }: what the marks mean
legend-description = Each mark of the chart with its meaning, and the yarns.

draft = DRAFT: not yet to be worked.
draft-finding = { $finding }  { $place }: { $rule }
draft-more = and { $findings } more
draft-title = { $title } (draft)

# Characters that no typeface has, before anything is written. $characters: each with its number in Unicode; $place: the
# text that they stand in; $count: how many they are
unprinted = in { $place } no typeface of this program has { $characters }; { $count ->
    [one] its number stands for it
   *[other] their numbers stand for them
    }
# $text: which text; $yarn: the yarn that it is about
unprinted-text = { $text ->
    [DESIGNER] the designer's name
    [NOTES] the notes
    [SECTIONS] the sections of the designer's own
    [PHOTOS] what stands under the photographs
    [IMPRINT] the imprint
    [SKILL] the words about skill
    [YARN_ID] the letter of yarn { $yarn }
    [YARN_NAME] the name of yarn { $yarn }
    [VERSION] the version of the pattern
    [DATE] the date of the pattern
   *[TITLE] the title
    }
