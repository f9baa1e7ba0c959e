# The pattern in words below the chart. An ampersand stands before the letter that works as mnemonic.

heading = Words
words-name = Words of the rounds
terms-UK = UK
tip-UK = Show the words in UK terms
terms-US = US
tip-US = Show the words in US terms
eachRound = Each round
eachRound-tip = Tell each round by itself; otherwise rounds that are worked alike stand under one title
copy = Copy
copy-tip = Copy these words, or what is chosen of them
unworkable = { $errors ->
    [one] There is an error finding
   *[other] There are { $errors } error findings
    } in { $rounds ->
    [one] this round: it cannot be worked as it is
   *[other] these rounds: they cannot be worked as they are
    }.

# What is read, a stitch and its words. $where: part-... or all-along; $words: as the pattern has them
read = Round { $round }, { $where }: { $words }
read-of = Round { $round }, { $where }: { $words }, { $nth } of { $of }
part-BEFORE = from the corner
part-GROUP = in the repeat
part-AFTER = to the corner
all-along = all along the side

# The keys in the words
does-next = The next stitch, as a maker works
keys-next = RIGHT, KP_RIGHT
shown-next = →
does-back = The stitch before
keys-back = LEFT, KP_LEFT
shown-back = ←
does-nextStep = The next run or bracket
keys-nextStep = ctrl RIGHT, ctrl KP_RIGHT
shown-nextStep = Ctrl →
does-stepBack = The beginning of this run or bracket, or the one before
keys-stepBack = ctrl LEFT, ctrl KP_LEFT
shown-stepBack = Ctrl ←
does-nextRound = The next round, where it begins
keys-nextRound = DOWN, KP_DOWN
shown-nextRound = ↓
does-roundBack = The round before, where it begins
keys-roundBack = UP, KP_UP
shown-roundBack = ↑
does-first = The first stitch of the round
keys-first = HOME
shown-first = Home
does-last = The last stitch before the round begins again
keys-last = END
shown-last = End
does-there = Put the cursor there
keys-there = ENTER, SPACE
shown-there = Enter
does-leave = Back to the chart
keys-leave = ESCAPE
shown-leave = Esc
