# What stands around the chart. An ampersand stands before the letter that works as mnemonic.

# The tray above the chart
tray-work = The stitch to work
tray-tools = Tools
tray-mirrors = Mirrors
tray-show = What to show
tray-layers-BOTH = Both
tray-layers-FABRIC = Fabric
tray-layers-MARKS = Marks
tray-look = How the chart is shown
tray-turn = Rotate
tray-zoomOut = Smaller
tray-zoomIn = Larger
tray-fit = Whole chart

# Rounds
rounds-heading = Rounds
rounds-repeats = Re&peats, top and bottom
rounds-repeatsUpright = Repeats, left and ri&ght
rounds-side = { $stitches }
rounds-sides = { $topAndBottom }, { $leftAndRight }
rounds-repeats-tip = How often the repeat is worked on top and bottom, and on left and right. The counts below, the round guide and the amounts of yarn use it; the chart does not depend on it
rounds-counting-tip = Many makers count one corner chain at each end of a side as part of it
rounds-column-0 = Round
rounds-column-1 = Yarn
rounds-column-2 = Each side
rounds-side-tip = Stitches on a side, counted as chosen above; of two numbers the first is for top and bottom, the second for left and right
rounds-column-3 = Findings
rounds-tally = { $findings ->
    [one] 1 finding
   *[other] { $findings } findings
    }, { $errors ->
    [0] none of them an error
    [one] 1 of them an error
   *[other] { $errors } of them errors
    }
rounds-button-insertOutside = Insert outside
rounds-button-insertInside = Insert inside
rounds-button-moveOut = Move out
rounds-button-moveIn = Move in
rounds-button-duplicateRounds = Duplicate
rounds-button-deleteRounds = Delete

# Yarns
yarns-heading = Yarns
yarns-rounds = { $rounds ->
    [0] no round
    [one] 1 round
   *[other] { $rounds } rounds
    }
yarns-button-addYarn = Add…
yarns-button-changeYarn = Change…
yarns-button-removeYarn = Remove

# Findings
findings-heading = Findings
findings-summary = { $errors ->
    [0] no errors
    [one] 1 error
   *[other] { $errors } errors
    }, { $warnings ->
    [0] no warnings
    [one] 1 warning
   *[other] { $warnings } warnings
    } · { $stitches ->
    [0] no long stitches
    [one] 1 long stitch
   *[other] { $stitches } long stitches
    } judged
findings-more = { $summary } · the first { $listed } are listed, and there are { $more } more
findings-notJudged = Not judged: a section has the wrong length
findings-number = { $place }. { $title }
findings-searching = Looking for what can be done…
findings-remedies = What helps
findings-apply = Do this
findings-point = Point at one, or go to it with the Tab key, to see it on the chart.
findings-seen = Seen on the chart: { $stitches ->
    [0] no stitch changes
    [one] 1 stitch changes
   *[other] { $stitches } stitches change
    }, { $squares ->
    [0] no square looks otherwise
    [one] 1 square looks otherwise
   *[other] { $squares } squares look otherwise
    }; { $findings ->
    [0] no findings remain
    [one] 1 finding remains
   *[other] { $findings } findings remain
    }.
findings-seen-all = { $left ->
    [0] All { $mended } are mended.
    [one] { $mended } are mended, 1 cannot be.
   *[other] { $mended } are mended, { $left } cannot be.
    } { $seen }
findings-all = Mend all { $findings } of this kind, each with the first remedy that brings no new finding
findings-all-none = None of these can be mended without a new finding.
findings-rule = Findings of which rule
findings-rule-all = All rules ({ $findings })
findings-rule-one = { $title } ({ $findings })
findings-round = Findings in which round
findings-round-all = All rounds
findings-round-one = Round { $round } ({ $findings })
findings-grouping = How the findings are put together
findings-grouping-NONE = In working order
findings-grouping-RULE = By rule
findings-grouping-ROUND = By round
findings-group = { $findings ->
    [one] 1 finding
   *[other] { $findings } findings
    }
findings-filtered = None of these is left
findings-filtered-text = { $findings ->
    [one] 1 other finding is
   *[other] { $findings } other findings are
    } not shown. Choose all rules and all rounds above, or press F4, to see { $findings ->
    [one] it
   *[other] them
    }.
findings-none = Hands can work this chart
findings-none-text = No rule is broken. Whether the fabric looks right is for the eye to judge: show the fabric only, and work a swatch.
findings-choose = Choose a finding
findings-choose-text = Each finding leads to its stitch, says why hands cannot work it, and offers what helps. F4 goes to the next one.

# The status line
status-landing = Here the tool works { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }.
status-landing-findings = Here the tool works { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }, and { $findings ->
    [one] 1 new finding comes
   *[other] { $findings } new findings come
    } of it.
status-cancel = Cancel
status-progress = Progress

# Names of edits
edit-remedy = { $remedy }
edit-remedy-all = { $title }: { $left ->
    [0] all { $mended } mended
   *[other] { $mended } mended, { $left } could not be
    }

# What happens in the background, and what came of it
news-DONE = Done: { $edit }
news-UNDONE = Undone: { $edit }
news-REDONE = Redone: { $edit }
