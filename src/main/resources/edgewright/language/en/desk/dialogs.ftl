# Dialogs
newChart-title = New chart
newChart-accept = Be&gin
newChart-chartTitle = &Title
newChart-rounds = &Rounds
newChart-fromCorner = Stitches from the &corner
newChart-repeat = Stitches in the re&peat
newChart-toCorner = Stitches to the c&orner
newChart-explain = Counted on the base round. Every round has one stitch more at each end of a side; the repeat keeps its width and is worked as often as it fits. All of this can be changed later.
newChart-closes = { $counts } For instance { $examples }.
newChart-picture = Picture
newChart-skeleton = One corner of the border: { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
    } in { $yarns ->
    [one] one yarn
   *[other] { $yarns } yarns in turn
    }; { $fromCorner } from the corner, { $repeat } in the repeat, { $toCorner } to the corner.
newChart-yarns = Yarns, worked in turn
newChart-yarnLabel = Yarn { $letter }
newChart-nextYarn = Yarn { $letter }
newChart-moreYarn = One &more yarn
newChart-fewerYarn = One &fewer
newChart-objection-title = A chart needs a title.
side-title = Change the side
side-accept = C&hange
side-fromCorner = Stitches from the &corner
side-repeat = Stitches in the &repeat
side-toCorner = Stitches &to the corner
side-explain = Counted on the base round. Every round has one stitch more at each end of a side. The corners keep their shape: columns are inserted or deleted beside the repeat.
shift-title = Shift the repeat
shift-accept = &Shift
shift-columns = &Columns
shift-explain = In working order; a negative number moves the repeat back. The repeat is { $stitches } stitches wide.
shift-objection = Type a number other than 0.
letters-titleOf = Round { $round } in letters, { $yarn }
letters-accept = &Write
letters-section-fromCorner = &From the corner
letters-section-repeat = &Repeat
letters-section-toCorner = &To the corner
letters-explain = In working order, one letter for each stitch: b back-loop, p plain, l long, c chain.
letters-objection-letter = { $section }: only b, p, l and c stand for stitches.
letters-objection-length = { $section }: { $stitches ->
    [0] no stitches
    [one] 1 stitch
   *[other] { $stitches } stitches
    }, but this round needs { $expected }.
letters-objection-empty = { $section }: round 1 needs at least one stitch here.
properties-title = Chart properties
properties-accept = C&hange
properties-chartTitle = &Title
properties-designer = &Designer
properties-notes = &Notes
properties-terms = T&erms
properties-chains = &Chains in a corner
properties-rules = What this chart allows
properties-landOnCornerChain = A long stitch may &land in a corner chain
properties-stackLongStitches = A long stitch may land on a long stitch (&stacking)
properties-looseRun = Warn of runs of &more than

# The picture of a side
sidePicture-heard = A side of the base round: { $fromCorner } stitches from the corner, { $repeat } in the repeat, { $toCorner } to the corner; and { $rounds } rounds on it.
sidePicture-from = ← { $section }
sidePicture-repeat = { $section }, repeated
sidePicture-to = ← { $section }
