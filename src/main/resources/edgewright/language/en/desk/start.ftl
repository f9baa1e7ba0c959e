# The page on which the desk begins.

start-heard = Start page
start-title = Begin a border
start-leave = Go to the chart
start-new = Draw a new border
start-new-what = Give it a title, the stitches of a side and its yarns; then draw.
start-change = Change a sample
start-change-what = Open Reed Bank and work other stitches in it. The sample itself stays as it is.
start-read = Read a pattern text
start-read-what = Paste words by anybody, see how each line is understood, and have it drawn as a chart.
start-recent = Charts you worked on last
start-noRecent = Nothing yet. What you open or save stands here the next time.
start-samples = Samples

# The cards of charts
card-looking = Being drawn…
card-rounds = { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    }
card-gone = Gone
card-gone-line = Press to take it off
card-unreadable = Cannot be read
card-unreadable-line = Press to see why
card-heard = { $state }. { $line }
