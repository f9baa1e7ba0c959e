# What the commands say. Their help is in usage.properties, where the library looks for it.

# One line on standard error for bad input and usage.
usage = { $mistake }; '{ $command } --help' shows how
no-command = found no command, expected one
no-such-command = found '{ $found }', expected one of the commands { $commands }
usage-value = { $option }: { $mistake }
usage-noSuchOption = found '{ $found }', expected one of the options { $options }
usage-more = found '{ $found }' after { $before }, expected nothing more but options
usage-optionForValue = { $option }: found '{ $found }' after it, expected { $value }
usage-noValue = { $option }: found nothing after it, expected { $value }
usage-noValueWanted = { $option }: found '{ $found }' after it, expected no value
usage-no = no { $option }
usage-missing = found { $missing }; expected { $count ->
    [one] one
   *[other] one of each
    }
usage-together = { $options }: found together, expected one of them
usage-twice = { $option }: found more than once, expected it once
usage-unclear = found '{ $found }', expected a command with its options
number = found '{ $found }', expected a number from { $least } to { $most }
output-ending = { $file }: expected a file whose name ends in { $endings }
output-chart = { $file }: this is the chart itself; expected another file to write
output-source = { $file }: this file is read for the answer; expected another file to write
draw-forBorder = { $option }: found for a picture of one corner or side, which has no size; expected it with --view border
draw-forCorner = { $option }: found for a picture of a side or a whole border, which is not rotated; expected it with --view corner
draw-forPixels = { $option }: found for '{ $file }', which has no pixels; expected it with a name that ends in .png
draw-forShop = { $option }: found for a picture that is not for a shop page; expected it with --size
draw-shopShows = { $option }: found for another picture than the fabric of the whole border; expected it with --view border --layer fabric
draw-notForShop = { $option }: found beside --size, which says how large the picture is and shows finished work; expected one of the two
draw-oblong = a whole border is drawn around a piece with right angles; expected the same number for top and bottom, and for left and right
draw-stitches = this picture would have { $stitches } stitches; expected at most { $most }, for example with fewer repeats
draw-pixels = this picture would have { $millions } million pixels; expected at most { $most } million, for example with a smaller --dpi or --cell-mm
draw-done = wrote { $file }: { $widthMm } by { $heightMm } mm
write-done = wrote { $file }
# $part, $first: as they are called on the command line
parts-twice = --parts: { $part } is there twice, expected each part once
parts-cover = --parts: cover comes after { $first }, expected it first
parts-none = --parts: no part is left for the file of --to, expected at least one that is not of the workbook
parts-notOfWords = --parts: words have no part { $part }, expected parts of: cover, introduction, facts, chart, words, techniques, counts, finishing, sections
parts-noWords = --leave-out: no part is left, expected at least one
parts-noWorkbook = --workbook: no part is left for its file, expected at least one of guide, worksheet, sizes, yarn
publish-same = { $file }: both files have this name, expected another name for the workbook
publish-stitches = the chart of this pattern would show { $stitches } stitches; expected at most { $most }, for example with fewer rounds
publish-notProved = not published: the words do not make the chart. { $problem }
publish-done = wrote { $file }: { $pages ->
    [one] 1 page
   *[other] { $pages } pages
    }
path-empty = found '', expected the name of a file
path-bad = found '{ $found }', which cannot be the name of a file here ({ $reason }); expected a name that this system allows
whole = found '{ $found }', expected a whole number
whole-between = { $option }: found { $found }, expected { $least } to { $most }
whole-tooLarge = found '{ $found }', expected a whole number of at most { $most }
perSide = found '{ $found }', expected four whole numbers from 0 to 1,000,000 (top, left, bottom, right), or two
crop = found '{ $found }', expected four whole numbers: left, top, width and height in pixels
choice = found '{ $found }', expected one of { $choices }
first-of = { $line } (the first of { $problems } problems)
output-failed = the answer could not be written ({ $reason }); expected somewhere with room for it
memory = there is not enough memory for this; expected a smaller chart or picture
mistake = this is a mistake in the program, not in what you gave it ({ $failure })

screen-chart = there is no screen here on which to open '{ $chart }'; 'edgewright --help' shows what can be done without one
screen-none = there is no screen here on which to open the window; 'edgewright --help' shows what can be done without one
screen-sample = There is no screen here, so no window opens. Instead, the sample chart is checked and published.

version = Edgewright { $version }
version-none = Edgewright, not packaged

error = error
warning = warning

check-summary = { $file }: '{ $title }', { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }: { $errors ->
    [0] no errors
    [one] 1 error
   *[other] { $errors } errors
    }, { $warnings ->
    [0] no warnings
    [one] 1 warning
   *[other] { $warnings } warnings
    }; { $stitches ->
    [0] no long stitch to judge
    [one] 1 long stitch judged
   *[other] { $stitches } long stitches judged
    }.
check-notJudged = { $file }: '{ $title }', { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }: { $errors ->
    [one] 1 error
   *[other] { $errors } errors
    }; no stitch can be judged before each section has the right length.
check-finding = {"  "}{ $severity }  { $place }: { $finding } [{ $rule }]
check-remedy = {"      "}try: { $remedy }
check-otherRemedy = {"      "}or:  { $remedy }
check-helped = {"  "}(remedies are shown for the first { $most } findings)
check-more = {"  "}and { $findings } more
check-moreByCheck = {"  "}and { $findings } more; the command check lists { $untold ->
    [0] them
   *[other] the first { $most }
    }

work-size = found no size to work, expected --sides or --repeats, or a piece with --at-round and --counts
work-sides = found no --sides N,N,N,N; expected the stitches of each side in the base round, since there is no CHART to say them
work-nothing = found no CHART, no --from TEXTFILE; expected a chart, or a pattern in words
work-tooLarge = this piece would have { $stitches } stitches; expected at most { $most }, for example with fewer repeats
work-toWithChart = --to: found with a CHART, expected it only without one, where a chart is drawn from words
work-unread = { $source }: { $mistake }
work-freshWords = the pattern as it is written now
work-finding = { $finding }
work-explainFrom = --explain: found no --from TEXTFILE, expected the text that is to be explained
explain-own = The text is in the words of the program itself. Understood as:
explain-line = { $number } | { $text }
explain-understood = ~~~~= { $what }
explain-word = ~~~~= '{ $word }': { $what }
explain-aside = ~~~~= column { $column }, '{ $text }': { $what }
explainedAs-BLANK = nothing
explainedAs-TITLE = title or designer
explainedAs-HEADING = heading
explainedAs-ABBREVIATION = abbreviations
explainedAs-YARNS = yarns
explainedAs-TERMS = terms
explainedAs-SET_UP = what holds for all rounds
explainedAs-ROUND = a round
explainedAs-TECHNIQUE = how yarn is joined and cut
explainedAs-PROSE = prose
explainedAs-REFUSED = not understood
explainedStitch-BACK_LOOP = the short stitch in the back loop only
explainedStitch-PLAIN = the short stitch through both loops
explainedStitch-LONG = the long stitch
explainedStitch-CHAIN = the chain
explain-noStitch = no stitch of a border, or a word of the trade
worked-AGREES = The words make the chart: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, { $stitches } stitches, worked on a base round of { $base } stitches.
worked-FITS = The words put the counts right and make the chart from there on: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, { $stitches } stitches, worked on a base round of { $base } stitches.
work-back = Behind it the back layer: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, { $joins ->
    [0] not joined
    [one] joined by 1 slip stitch
   *[other] joined by { $joins } slip stitches
    }.
worked-ALONE = The words can be worked: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, { $stitches } stitches, worked on a base round of { $base } stitches.
work-cornersDiffer = { $file }: the rounds turn their corners with different numbers of chains; a chart has one for all
work-longId = { $file }: a yarn has the id '{ $id }'; expected an id of 1 to { $most } letters or digits for a chart
work-manyYarns = { $file }: the words name { $yarns } yarns; expected { $most } at most for a chart
work-manyRounds = { $file }: the words have { $rounds } rounds; expected { $most } at most for a chart
work-wideCorner = { $file }: a corner section would have { $stitches } stitches in round 1; expected { $most } at most for a chart
work-noCommonRepeat = { $file }: no one repeat fits all rounds on sides of this size; try longer sides

piece-anySize = --any-size: found with --at-round and --counts, expected one of them: a piece that was counted has a size
piece-counted = --untie or --target: found without --at-round and --counts, expected these too: what was counted on the piece
fit-counted = found no --at-round R, no --counts N,N,N,N; expected both: the round in which the piece was counted, and the counts
fit-round = { $file }: there is no round { $round } in this chart; expected 0, the base round, to { $last }
fit-backRound = { $file }: there is no round { $round } in the back layer; expected 1 to { $last }
fit-noBack = { $file }: this chart has no back layer; expected one with a back layer, or --layer front
fit-front = found --layer back, and nothing of the front; the back must have the very counts of the front, or the layers cannot be joined: expected --front-round R and --front-counts N,N,N,N, or the size as --repeats, --sides or --target
fit-frontOnly = found --front-counts without --layer back; expected both or neither
fit-frontOrSize = found --front-counts beside a size; expected one of the two
fit-frontOpen = { $file }: the front's counts in round { $round } do not come out even on every side; expected those of a front that is put right
fit-counts = { $option }: found '{ $found }'; with corner chains counted, expected 2 or more for each side

yarn-size = found no size on which all sides come out even, expected --sides or --repeats to count yarn for
yarn-head = '{ $title }', on a base round of { $base } stitches
yarn-column-round = Round
yarn-column-yarn = Yarn
yarn-column-stitches = Stitches
yarn-column-metres = Length
yarn-column-soFar = Of this yarn so far
yarn-column-needed = Needed
yarn-column-grams = Grams
yarn-column-balls = Balls
yarn-column-inHand = In hand

# $mistake: what was found and expected
made-refused = { $file }: { $mistake }
picture-noPicture = { $file }: this is neither text in UTF-8 nor a PNG; expected a picture of one repeat
picture-broken = { $file }: this begins as a PNG, and cannot be read as one; expected a whole PNG
picture-forPixels = { $option }: found for '{ $file }', which has letters and no pixels; expected it with a PNG
picture-yarns = --yarns: found '{ $found }', expected ids of yarns with commas between them, or find
picture-yarnCount = --yarns: found { $yarns ->
    [one] 1 yarn
   *[other] { $yarns } yarns
    } for { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }; expected one for each, or ',...' after the last to go on from the first
picture-noYarn = --yarns: found '{ $found }', which is no yarn of { $file }; expected { $yarns }
picture-manyYarns = --yarns: found { $yarns } yarns; expected { $most } at most for a chart
picture-findYarns = --yarns find: found { $yarns } yarns in the picture; expected { $most } at most to find an order of
picture-done = wrote { $file }: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, a repeat of { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }; { $misses ->
    [0] every square shows what is wanted
    [one] 1 square shows another yarn than is wanted
   *[other] { $misses } squares show another yarn than is wanted
    }
picture-fewest = No chart with these yarns shows it with fewer.
picture-notProved = Perhaps there is one with fewer: not every way of breaking the runs was tried.
picture-order = The yarns from round 1 on: { $yarns }.
picture-more = and { $misses } more; --json lists them all

surround-done = wrote { $file }: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, a repeat of { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }; sides of a multiple of { $multiple } plus { $plus } in the base round

folder-file = { $folder }: this is a file; expected a folder, which is made if there is none
folder-notMade = { $folder }: this folder cannot be made; expected one that can be written to
corners-done = wrote { $file }: score { $score }; sides of a multiple of { $multiple } plus { $plus } in the base round
corners-fewer = { $found ->
    [one] There is no other corner that looks clearly different.
   *[other] There are no more than { $found } corners that look clearly different.
    }

letter-text = TEXT: { $mistake }
letter-done = wrote { $file }: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }, a repeat of { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }

vary-fewer = { $found ->
    [0] Chance found no chart
    [one] Chance found 1 chart
   *[other] Chance found { $found } charts
    } that keeps all conditions, where { $wanted } were wanted.
