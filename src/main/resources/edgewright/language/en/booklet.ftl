# What the printed pattern says in its own words. The words of the rounds come from the bundle of words.
terms-UK = UK terms
terms-US = US terms
terms-BOTH = UK and US terms
page = page { $page } of { $pages }
draft = DRAFT
foot-version = Version { $version }
untitled = Untitled border
# $title: of the pattern
workbook-title = { $title }: workbook

# The first page.
cover-by = Designed by { $designer }
cover-what = A border in overlay mosaic crochet, worked in rounds from the edge of the piece outwards
cover-picture = The border { $title } around a piece, as it looks when it is worked, seen from the right side. { $shown }
# Which piece the picture shows.
cover-shown-size = The picture shows the size { $size }.
cover-shown-repeats = The picture shows a piece with the repeat { $across } times at top and bottom and { $down } times at the sides.
cover-shown-corner = The picture shows an outer corner.
cover-terms = Terms
cover-terms-UK = UK terms throughout
cover-terms-US = US terms throughout
cover-terms-BOTH = UK terms and US terms, one after the other
cover-edition = Edition
cover-edition-LARGE_PRINT = Large print
cover-edition-BLACK_AND_WHITE = Black and white, for copying
cover-piece = For
cover-piece-one = One piece only. { $counted } Round { $round } puts the counts right.
cover-sizes = Sizes
cover-hand = For
cover-hand-LEFT = Left-handed makers: you travel clockwise, and the chart is mirrored
cover-skill = Skill
cover-version = Version
cover-date = Date
cover-rounds = Rounds
cover-yarns = Yarns

# The list of contents, and the ways between chart and words.
contents-heading = Contents
link-chart = the same as a chart: page
link-words-UK = in words, UK terms: page
link-words-US = in words, US terms: page
link-only-UK = the same in words: page
link-only-US = the same in words: page
both-heading = { $heading }, { $terms }

# Which of the published advice for readers with low vision the large print edition meets.
large-heading = About this large print
large-type = Type: black on white, sans serif, 22 points or larger except in the chart, never in italics. Only yarns and the chart are in colour, and both are named in words as well.
large-lines = Lines: one column, aligned left, with a margin of an inch on every side. Lines are 30 points apart, about 1.4 times the type. A blank line separates the groups.
large-words = Words: every round is written out in full, the words come before the chart, and nothing is said by the chart alone. Abbreviations are listed.
large-running = Headers and footers: they hold nothing that you need but the page number.
large-links = Links: the contents, the chart and the rounds lead to one another, and the document has an outline.
large-chart = The chart: what its marks mean is said in type of 22 points. Its squares are 10 mm wide where no other size was asked for, and its numbers are smaller than 22 points. All that it says is said in words as well, before it comes.

# A chart with error findings.
draft-heading = This is a draft
draft-why = The chart has stitches that hands cannot work, so the pattern is not ready for a maker. The numbers are those of the rings in the chart.
draft-line = { $place }: { $finding }
# $finding: its number, as in the chart
finding-ERROR = { $finding } error
finding-WARNING = { $finding } warning
draft-more = { $findings ->
    [one] There is 1 more finding.
   *[other] There are { $findings } more findings.
    }

# The table of counts for a few sizes.
counts-round = Round
counts-yarn = Yarn
counts-base = base
counts-repeats = { $repeats ->
    [one] 1 repeat
   *[other] { $repeats } repeats
    }
# The same, short.
counts-times = { $repeats }×
counts-caption-STITCHES = Stitches on a side in each round; corner chains are not counted.
counts-caption-WITH_CHAINS = Stitches on a side in each round, with one corner chain counted at each end.
counts-examples = The columns are examples: sides with so many repeats. Any other number of repeats will do, and top and bottom may have a different number from left and right.

# For which sizes the words were worked back.
proved-heading = How the words were proved
proved-how = Every stitch, every count and every yarn that shows was worked back from these words and agreed with the chart { $agreed }.
# A pattern for one piece. $round: the changing round; $agreed: the base round of the piece
proved-how-piece = From round { $round } on, every stitch, every count and every yarn that shows was worked back from these words and agreed with the chart { $agreed }.
proved-alike-STITCHES = on base rounds of { $counts } stitches a side, corner chains not counted
proved-alike-WITH_CHAINS = on base rounds of { $counts } stitches a side, with one corner chain counted at each end
proved-four-STITCHES = on a base round of { $top } stitches at the top, { $left } at the left, { $bottom } at the bottom and { $right } at the right, corner chains not counted
proved-four-WITH_CHAINS = on a base round of { $top } stitches at the top, { $left } at the left, { $bottom } at the bottom and { $right } at the right, with one corner chain counted at each end of a side
# $alike: those with four like sides
proved-others = { $alike }, and on { $pieces ->
    [one] one piece whose sides differ
   *[other] { $pieces } pieces whose sides differ
    }
proved-tooLarge = Pieces of more than { $stitches } stitches were not proved.
proved-failed = The words do not make the chart { $agreed }. { $problem }

# The chart.
chart-heading = Chart
chart-read = One square is one stitch, and one ring of squares is one round, numbered from the piece outwards. The colour of a square is the yarn that shows there when the border is done; the mark on it says what to work. The letter beside a round is its yarn.
chart-read-black = One square is one stitch, and one ring of squares is one round, numbered from the piece outwards. A hatched square shows the darkest yarn when the border is done, a white one another yarn; the mark on it says what to work. The letter at both ends of a round is its yarn.
# After how a square is read, in one ink, where there are three yarns or more
chart-letters = A white square bears the letter of the yarn that shows there, and a solid line parts areas of different yarns.
chart-limbs = The chart shows one corner, with the side that is worked towards it and the side that is worked away from it. The bracket marks one repeat: work it as often as the side needs. The signs lie as their side does: down is always towards the middle of the piece. All four sides and all four corners are alike.
# $kind: the corner, or a level side
chart-alternative = Chart of { $kind ->
    [SIDE] one side
   *[CORNER] one corner
    } of { $title } with { $rounds } rounds.
chart-alternative-elsewhere = The rounds in words say the same.
chart-alternative-sheet = Sheet { $sheet } of { $sheets } of the chart of { $kind ->
    [SIDE] one side of { $title }
   *[CORNER] one corner of { $title }. The picture of the whole corner comes before it, with all rounds in words
    }.
chart-alternative-sheets = It is printed on { $sheets } sheets, which follow. Each of them gives in words the rounds that no sheet before it has given.
chart-alternative-part = Sheet { $sheet } of { $sheets } of the chart of { $kind ->
    [SIDE] one side
   *[CORNER] one corner
    } of { $title }. It shows stitches of rounds { $shown }.
chart-alternative-before = Given with a sheet before this one: rounds { $shown }.
chart-alternative-rest = Given with the rounds in words: rounds { $shown }.
chart-alternative-range = { $first } to { $last }
chart-sample = Sample of a mark: { $meaning }
chart-legend = What the marks of the chart mean, and the yarns.
chart-sheet = Sheet { $sheet } of { $sheets }
chart-joins-LEFT = The { $shared } columns at the left are also on sheet { $sheet }.
chart-joins-RIGHT = The { $shared } columns at the right are also on sheet { $sheet }.
chart-joins-TOP = The { $shared } rows at the top are also on sheet { $sheet }.
chart-joins-BOTTOM = The { $shared } rows at the bottom are also on sheet { $sheet }.
# The same in few words, for large print.
chart-brief-LEFT = Left: sheet { $sheet }.
chart-brief-RIGHT = Right: sheet { $sheet }.
chart-brief-TOP = Above: sheet { $sheet }.
chart-brief-BOTTOM = Below: sheet { $sheet }.
chart-overview = The whole corner, divided into the { $sheets } sheets that follow, each with its number.

chart-side-heading = One side, from corner to corner
# $hand: for which maker; $edition: what shows the yarn
chart-side-read = One square is one stitch, and one row is one round, worked { $hand ->
    [LEFT] from left to right
   *[RIGHT] from right to left
    }: from the corner just turned, over the repeat, to the next corner. The lowest row is the base round. { $edition ->
    [BLACK_AND_WHITE] A hatched square shows the darkest yarn when the border is done, a white one another yarn
   *[STANDARD] The colour of a square is the yarn that shows there when the border is done
    }; the mark on it says what to work. The letter at both ends of a row is the yarn of the whole round.
# The same after what is said of the corner
chart-side-also = After the corner one side is drawn by itself, from corner to corner. There one row is one round, worked { $hand ->
    [LEFT] from left to right
   *[RIGHT] from right to left
    }: from the corner just turned, over the repeat, to the next corner. The letter at both ends of a row is the yarn of the whole round.
chart-side-count = The heavier lines mark the repeat, which is shown once: work it as often as the side needs. The short lines count stitches in tens: up to them from the corner just turned, with the repeat worked once, and after the repeat back from the next corner. All four sides are alike.
# A side in parts, each with what it shows
chart-side-part = Side, part { $part } of { $parts }
chart-section-FROM_CORNER = the stitches from the corner just turned
chart-section-REPEAT = the repeat
chart-section-TO_CORNER = the stitches to the next corner
chart-side-shows = { $sections }
chart-side-rounds = { $sections }; rounds { $first } to { $last }

# The four sides.
side-TOP = top
side-LEFT = left
side-BOTTOM = bottom
side-RIGHT = right

# The round guide. The words of a side come from the bundle of words, what to see from the bundle of fit.
guide-heading = Round guide
guide-how-piece = One block for each round, to work from with a pencil at hand. In round { $round } each side has words of its own; in the others all four sides are worked alike. Tick a side when it is done, and the last box when the sides are counted.
guide-how = One block for each round, to work from with a pencil at hand. All four sides are worked alike: tick a side when it is done, and the last box when the sides are counted.
guide-examples = The counts are for sides with so many repeats of the chart; the bracket marks one repeat. The group after an asterisk can be shorter than the repeat and is then worked more often.
guide-round = Round { $round }
guide-yarn = { $id } { $name }
guide-hook = hook { $mm } mm
guide-hookUs = hook { $mm } mm (US { $name })
guide-yarnAndHook = { $yarn }, { $hook }
# A label on the line of what it names.
guide-runIn = { $label }:
# $words: of the one or the other terms
guide-inTerms-UK = UK: { $words }
guide-inTerms-US = US: { $words }
guide-start = Start
guide-eachSide = Each side
guide-fromCorner = From the corner
guide-repeat = Repeat
guide-toCorner = To the corner
guide-corner = Corner
guide-sides = Each side
guide-back = Back layer
guide-back-matches = Round { $round } of the back layer has the same counts.
guide-seen = Look for
guide-counts-sides = Side
guide-counts-repeats = Repeats of the chart
guide-counts-repeatsShort = Repeats
guide-counting-STITCHES = Stitches only
guide-counting-WITH_CHAINS = With corner chains
guide-count = Count
guide-done = Done
guide-counted = counted

# The worksheet, to be filled in with a pencil. $where: a round, as worksheet-base or worksheet-round call it
worksheet-heading = Worksheet
worksheet-how = Every side must come out even before the design begins. Write your counts here; each step says what to do with them.
worksheet-how-piece = What was counted on this piece, what to change, and what to count afterwards.
worksheet-counted-piece = 1. Counted in { $where }
worksheet-inPicture = The lines in the picture are for { $where }.
worksheet-base = the base round
worksheet-round = round { $round }
worksheet-piece = the piece, right side facing
worksheet-picture = The piece as a box inside its border, seen from the right side. On each of the four sides, top, left, bottom and right, there are lines to write on: counted, target and change. The steps that follow have the same lines.
worksheet-counted = counted
worksheet-target = target
worksheet-change = change
worksheet-minusTarget = − target
worksheet-equalsChange = = change
worksheet-lose = lose
worksheet-add = add
worksheet-count = 1. Count in { $where }
worksheet-count-way-STITCHES = corner chains not counted
worksheet-count-way-WITH_CHAINS = with one corner chain at each end
worksheet-count-how-STITCHES = Count each side from corner to corner; do not count the corner chains. Choose the nearest target from the table, the same for opposite sides. If you counted more than the target, lose stitches; if fewer, add stitches.
worksheet-count-how-WITH_CHAINS = Count each side and one corner chain at each end of it. Choose the nearest target from the table, the same for opposite sides. If you counted more than the target, lose stitches; if fewer, add stitches.
worksheet-even = Counts that come out even in { $where }: { $multiple }.
worksheet-changeIn = 2. Change in { $where }
worksheet-changeBase = 2. Work the base round again, with the changes
worksheet-change-spread = Count along the stitches of { $where }. Divide the count of a side by its changes plus one and ignore the remainder: that is how far apart the changes are. Write down the stitches at which you change. Leave the two stitches next to each corner as they are.
worksheet-example = For example: counted { $counted }, target { $target }, changes { $changes }; { $counted } ÷ { $parts } = { $every }; changes at stitches { $places }.
worksheet-change-how = To add a stitch, work two into one; to lose one, work two together. More than one change in six stitches makes the edge ruffle or pull in: then choose another target.
worksheet-dividedBy = ÷ (changes + 1)
worksheet-every = = every
worksheet-places = changes at stitches
worksheet-check = 3. Count again in { $where }
worksheet-check-same = Now every side has its target.
worksheet-check-grown = Every round makes a side 2 stitches longer, so each target is now { $stitches } more than in { $where }.
worksheet-right = comes out

# The tables of the worksheet.
sizes-even = Counts that come out even in { $where }
sizes-any = Any number from { $fewest }, { $way }: nothing needs to be changed.
sizes-how-10 = Tens of repeats at the left, ones at the top: 10 and 3 make 13 repeats. Counts are stitches on a side, { $way }.
sizes-how-5 = Repeats by fives at the left, the rest at the top: 10 and 3 make 13 repeats. Counts are stitches on a side, { $way }.
sizes-repeats = Repeats
sizes-base = Base round
sizes-round = Round { $round }
sizes-part = Sizes
sizes-heading = Counts and measures
sizes-bySwatch = Measures are worked out from the swatch: the side of the piece with its base round, and the whole with its border.
sizes-pieceCm = Piece, cm
sizes-outerCm = Whole, cm
sizes-pieceIn = Piece, in
sizes-outerIn = Whole, in
sizes-swatch-heading = Finished size
# $terms: whose measures lead, UK or US
sizes-swatch = { $terms ->
    [US] The swatch has { $stitches } stitches and { $rounds } rounds in 4 in (10 cm).
   *[UK] The swatch has { $stitches } stitches and { $rounds } rounds in 10 cm (4 in).
    }
sizes-swatch-of = { $size }: { $outer }
sizes-width = { $terms ->
    [US] The border is { $inches } in ({ $cm } cm) wide.
   *[UK] The border is { $cm } cm ({ $inches } in) wide.
    }
sizes-pickUp-heading = Picking up the base round
sizes-pickUp = Along a row of stitches pick up one in each stitch. Along the ends of rows pick up as many as make the edge lie flat, in an even rhythm: one in every row where rows are low, three in every four where a row is a little higher than a stitch is wide, two or three in every row of tall stitches.
# $terms: whose measures lead, UK or US
sizes-pickUp-rows = { $terms ->
    [US] With { $stitches } stitches in 4 in (10 cm), count the rows in 4 in (10 cm) of the piece:
   *[UK] With { $stitches } stitches in 10 cm (4 in), count the rows in 10 cm (4 in) of the piece:
    }
sizes-pickUp-rowsIn10Cm = { $terms ->
    [US] Rows in 4 in (10 cm)
   *[UK] Rows in 10 cm (4 in)
    }
sizes-pickUp-ratio = Stitches in rows
sizes-pickUp-in = { $stitches } in { $rows }
sizes-back-heading = Back layer
sizes-back-hook = Hook for the back layer: { $mm } mm.
sizes-back-hookUs = Hook for the back layer: { $mm } mm (US { $name }).
sizes-back-how = A round of the back layer has the same counts as the round of the front beside it: compare the two there.
sizes-back-round = Back round
sizes-back-front = Front round

yarn-heading = How much yarn
yarn-needs-examples = What you need of each yarn, rounded up. The columns are examples: pieces with so many repeats on each of the four sides.
yarn-metres = Metres
yarn-soFar = Metres so far
yarn-yards = Yards
yarn-yardsSoFar = Yards so far
yarn-metresOf = { $size }, m
yarn-yardsOf = { $size }, yd
yarn-gramsOf = { $size }, g
yarn-unknown = –
# $terms: UK, US or BOTH
yarn-rounds-size = What each round takes, and how much of its yarn has been used by its end, in { $terms ->
    [UK] metres
    [US] yards and metres
   *[other] metres and yards
    }, without the margin.
yarn-rounds-sizes = What each round takes in each size, in { $terms ->
    [UK] metres
    [US] yards and metres
   *[other] metres and yards
    }, without the margin.
yarn-rounds-examples = What each round takes on the same examples, in { $terms ->
    [UK] metres
    [US] yards and metres
   *[other] metres and yards
    }, without the margin.

# A chart as a poster. $rows, $columns: of sheets
poster-how = The sheets that follow make one picture. Lay them out in { $rows } rows and { $columns } columns; where a place is empty, no sheet is printed. Neighbouring sheets show the same strip: cut one of them at the ticks and glue it over the other.
# $title: which sheet it is
poster-where = { $title }. Row { $row }, column { $column }.

# Why a pattern cannot be published with the files that its chart names. One sentence each: what is there, then what was expected.

# $fault: what is wrong with the file that is named there
own-of-photo = { $file }, photos[{ $place }].file: { $fault }
own-of-imprint = { $file }, imprint: { $fault }
own-of-logo = { $file }, logo: { $fault }
own-pale = { $file }, accent: { $colour } has a contrast of { $ratio } to 1 with white paper; expected { $least } to 1 or more, so that headings can be read

own-photo-OUTSIDE = '{ $name }' leads out of the folder; expected a file in the folder or below it
own-photo-NOT_FOUND = there is no file '{ $name }'; expected one in the folder or below it
own-photo-NO_FILE = '{ $name }' is not an ordinary file; expected a JPEG or PNG
own-photo-NOT_READABLE = the system does not let you read '{ $name }'; expected a file that you may read
own-photo-LARGE_FILE = '{ $name }' has { $found } bytes; expected { $bytes } at most
own-photo-ANOTHER_KIND = '{ $name }' is neither JPEG nor PNG; expected one of them
own-photo-MANY_PIXELS = '{ $name }' has { $found } pixels; expected { $pixels } at most
own-photo-FOUR_INKS = '{ $name }' is a JPEG in four inks (CMYK); expected one in colours of the screen (RGB) or in greys
own-photo-BROKEN = '{ $name }' is cut off, damaged or of a kind that is not read; expected a JPEG or PNG that is whole

# The designer's own matter.
# $text: the words of a link
own-address = { $text } ({ $address })
own-link = Link to { $address }
own-gallery = Photographs
own-logo = Logo of { $name }
own-publisher = Published by
own-contact = Contact
own-web = Web
own-copyright = Copyright
own-use = You may
