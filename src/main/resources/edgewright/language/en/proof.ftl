# What the proof says of words that make something else than the chart. $expected is what the chart has,
# $found what came off the hook.
difference-ROUNDS = The chart has { $expected ->
    [one] 1 round
   *[other] { $expected } rounds
    }, but { $found ->
    [0] no round was
    [one] 1 round was
   *[other] { $found } rounds were
    } made.
difference-YARN = Round { $round }: the chart has it in { $expectedYarn }, but it was worked in { $foundYarn }.
difference-CORNER = Round { $round }: the chart turns its corners with { $expected } ch, but { $found } ch were made.
difference-COUNT = Round { $round }, { $side }: the chart has { $expected } stitches, but { $found } were made.
difference-STITCH = Round { $round }, { $side }, stitch { $stitch }: the chart has { $expectedStitch }, but { $foundStitch } was made.
difference-LANDING = Round { $round }, { $side }, stitch { $stitch }: the long stitch landed elsewhere than in the chart.
difference-SHOWN = Round { $round }, { $side }, stitch { $stitch }: the yarn of round { $expectedRound } should show, but that of round { $foundRound } does.
difference-BACK_ROUNDS = The back layer should have { $expected ->
    [0] no rounds
    [one] 1 round
   *[other] { $expected } rounds
    }, but { $found ->
    [0] no round was
    [one] 1 round was
   *[other] { $found } rounds were
    } made.
difference-BACK_HEIGHT = Back round { $round } should be as high as { $expected ->
    [one] 1 round
   *[other] { $expected } rounds
    } of the front, but is as high as { $found }.
difference-BACK_CORNER = Back round { $round }: the chart turns its corners with { $expected } ch, but { $found } ch were made.
difference-BACK_COUNT = Back round { $round }, { $side }: { $expected } stitches are needed to match the front, but { $found } were made.
difference-JOINS = The layers should be joined by { $expected } slip stitches, but { $found } were made.
difference-NOT_JOINED = The layers should be joined by { $expected } slip stitches, but they were not joined.
difference-more = And { $more ->
    [one] 1 more difference
   *[other] { $more } more differences
    }.

# A piece whose words are not worked.
too-large = This piece has { $stitches } stitches. Words are worked for pieces of at most { $most }.
