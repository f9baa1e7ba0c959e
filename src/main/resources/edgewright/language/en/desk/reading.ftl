# Reading the words of others

reading-title = Read a pattern text
reading-text = Pattern te&xt
reading-level = Base round, &top and bottom
reading-upright = &Left and right
reading-lines = Lines of the text, and how each was understood
reading-outcome = What came of it
reading-empty = Paste a pattern text at the left, or open one, then press Read. It may be your own or somebody else's; each line will stand here with what it was understood as.
reading-understood = { $rounds ->
    [one] One round is
   *[other] { $rounds } rounds are
    } understood. Choose a line to see the stitches it makes.
reading-understoodBut = { $rounds ->
    [one] One round is
   *[other] { $rounds } rounds are
    } understood, but { $problem }.
reading-asks = One thing must be said first.
reading-aside = ({ $text }: { $kind })
button-open = &Open a text…
button-read = &Read
button-draw = &Draw as a new chart
button-compare = &Compare with this chart
column-line = Line
column-text = Text
column-understood = Understood as
files-texts = Pattern texts (*.txt)

# How a line was understood that makes no stitches. $text, $kind in reading-aside: words within a line, and how they were taken
kind-BLANK = nothing
kind-TITLE = title or designer
kind-HEADING = heading
kind-ABBREVIATION = abbreviations
kind-YARNS = yarns
kind-TERMS = terms
kind-SET_UP = what holds for all rounds
kind-ROUND = a round
kind-TECHNIQUE = how yarn is joined and cut
kind-PROSE = prose
kind-REFUSED = not understood

# The question which terms a text is in. $summary: what came of it; $round: the first round in the words of the program
question-terms = The text does not say in which terms it is, and its words mean other stitches in UK terms than in US terms. Choose one:
question-answer-UK = &UK terms
question-answer-US = U&S terms
question-consequence = { $summary } { $round }

# The chart that the text makes
picture-none = No chart yet
picture-chart = The chart that the text makes: { $title }
picture-rounds = { $count ->
    [one] Round
   *[other] Rounds
    } { $rounds } of the chart that the text makes, framed
noChart-CORNERS_DIFFER = the rounds turn their corners with different numbers of chains; a chart has one for all
noChart-NO_COMMON_REPEAT = no one repeat fits all rounds on sides of this size; try longer sides
noChart-limit = the text makes more than a chart can hold

# Comparing. $differences: one on each line
compare-agrees = The text makes the chart “{ $title }” stitch by stitch.
compare-differs = The text makes another fabric than “{ $title }”:
    { $differences }
compare-otherSides = “{ $title }” does not come out even on sides with as many stitches as the text has.

# In the background
job-read = Reading the text…
news-opened = Opened { $file }
news-compared = The text was compared with the chart.
news-failed = The text could not be read to the end.
news-busy = Wait for the job that is running, or cancel it.
