# Dialogs
prove-title = Prove the words
prove-accept = &Prove them
prove-terms = &Terms
prove-sizes = &Repeats on each side
prove-explain = The pattern is written, read back as a maker reads it, and worked loop by loop. The result is compared with the chart.
prove-example = One size on each line. Two numbers: top and bottom, then left and right. Four: top, left, bottom, right. 0: the repeat is not worked.
prove-notSizes = Each line needs two or four whole numbers with commas between them.
prove-howMany = Give at least one size and at most { $most }.
prove-tooLong = A side can have at most { $most } repeats.
proof-title = The words, proved
proof-agrees = The words make the chart { $sizes ->
    [one] in the one size given
   *[other] in all { $sizes } sizes
    }
proof-fails = The words fail in { $failed } of { $sizes } sizes
proof-explain = For each size two patterns were proved: the one for every size, and the one with the counts of this size.
proof-first = Sides with { $repeats } repeats
proof-column-repeats = Repeats on a side
proof-column-base = Base round, { $counting }
proof-column-stitches = Stitches made
proof-column-outcome = Result
proof-chart = make the chart
publish-title = Publish the pattern
publish-pages = Pages
publish-accept = &Publish…
print-title = Print the pattern
print-accept = &Print…
publish-edition = &Edition
edition-STANDARD = in colour
edition-LARGE_PRINT = large print, words first
edition-BLACK_AND_WHITE = black and white, for copying
publish-paper = P&aper
publish-chartPaper = C&hart on
chartPaper-SAME = the same paper
chartPaper-A3 = A3
chartPaper-POSTER = a poster of several sheets
publish-pictures = Chart sho&ws
pictures-CORNER = one corner
pictures-SIDE = one side, corner to corner
pictures-BOTH = the corner and a side
publish-marks = L&ong stitches
marks-STEMS = as stems, to where they land
marks-SQUARES = each in its own square
publish-hand = Ha&nd
publish-hand-RIGHT = right: anticlockwise
publish-hand-LEFT = left: clockwise, chart mirrored
publish-version = &Version, as printed
publish-date = Date, as pr&inted
preview-back = Previous page
preview-on = Next page
preview-stop = Stop
preview-none-MAKING = Making the pages…
preview-none-CANCELLED = Cancelled until the next choice.
preview-none-FAILED = These pages cannot be shown.
preview-setting = Making the pages…
preview-page = Page { $page } of { $pages }
preview-first = Page 1, the others are being made…
preview-pageSetting = Page { $page } of { $pages }, before this change
preview-fitPage = Whole page
preview-fitWidth = Page width
preview-zoomOut = Smaller
preview-zoomIn = Larger
preview-paper = The page as it will be printed
publish-terms = &Terms
publish-layout = Ro&unds
publish-counting = &Counts
publish-fit = Chart as &large as the sheet allows
publish-cell = Width of a square, &mm
publish-parts = Part&s
publish-parts-tip = Space ticks a part, Alt with an arrow moves it
publish-partUp = Up
publish-partDown = Down
publish-apart = The wor&kbook in a second file
publish-apart-tip = Round guide, worksheet, sizes and yarn, as far as they are ticked
publish-noPart = Tick at least one part for the pattern.
publish-workbook-title = Publish the workbook
part-COVER = Cover
part-CONTENTS = Contents
part-INTRODUCTION = Introduction
part-FACTS = What you need, how it is worked
part-CHART = Chart
part-WORDS = Rounds in words
part-TECHNIQUES = Techniques, with figures
part-COUNTS = Stitch counts
part-FINISHING = Finishing
part-SECTIONS = Other sections and gallery
part-PROOF = How the words were proved
part-GUIDE = Workbook: round guide
part-WORKSHEET = Workbook: worksheet
part-SIZES = Workbook: sizes
part-YARN = Workbook: yarn by round
publish-imprint = Other imprint &file
publish-imprint-choose = Choose…
publish-imprint-tip = NAME.imprint.json, instead of that which the chart names
publish-draft = Publish as a &draft
publish-unworkable = { $errors ->
    [one] This chart has an error finding
   *[other] This chart has { $errors } error findings
    } and cannot be worked as it is. A draft says so on every page and lists the findings.
print-objection = This chart can only be printed as a draft.
print-draft = Print as a &draft
publish-objection = This chart can only be published as a draft.
paper-A4 = A4
paper-LETTER = US Letter
saveWords-title = Save the words
saveWords-accept = &Save…
saveWords-format = &File
saveWords-format-TEXT = plain text
saveWords-format-MARKDOWN = Markdown
saveWords-format-HTML = a page for the browser, with the chart
saveWords-terms = &Terms
saveWords-hand = &Hand
saveWords-hand-RIGHT = right
saveWords-hand-LEFT = left
saveWords-layout = Ro&unds
saveWords-counting = &Counts
picture-title = Save a picture
picture-accept = &Save…
picture-kind = &File
picture-kind-SVG = SVG, sharp at any size
picture-kind-PNG = PNG, in pixels
picture-part = Ar&ea
picture-part-CORNER = one corner
picture-part-SIDE = one side, corner to corner
picture-part-BORDER = the whole border
picture-stitches = { $stitches } stitches; { $most } at most: take fewer repeats
picture-pixels = { $millions } million pixels; { $most } at most: make the squares smaller
picture-content = Sh&ows
picture-content-CHART = the chart: fabric and marks
picture-content-FABRIC = the worked fabric
picture-content-MARKS = marks only
picture-marks = Lon&g stitches
picture-repeats = Repeats on &an arm
picture-cell = &Pixels per square
picture-legend = With the &legend
picture-turned = Ro&tated as on the desk
files-imprints = Imprints (*.imprint.json)
files-patterns = Printable patterns (*.pdf)
files-words-TEXT = Plain text (*.txt)
files-words-MARKDOWN = Markdown (*.md)
files-words-HTML = Pages (*.html)
files-pictures-SVG = Pictures (*.svg)
files-pictures-PNG = Pictures (*.png)

# What happens in the background, and what came of it
job-prove = Proving the words…
job-ownFiles = Reading photographs and imprint…
job-publish = Publishing { $file }…
job-words = Writing { $file }…
job-picture = Drawing { $file }…
job-cancelled = Cancelled; nothing was written.
news-proofFailed = The words could not be proved to the end.
news-ownFiles = Photographs and imprint have been read.
news-ownFilesRefused = Photographs and imprint could not be read.
news-published = Published { $file }, { $pages ->
    [one] 1 page
   *[other] { $pages } pages
    }
news-publishedDraft = Published the draft { $file }, { $pages ->
    [one] 1 page
   *[other] { $pages } pages
    }
news-unprinted = Not all of this can be printed: { $texts }.
news-tooLarge = The chart of this pattern would show { $stitches } stitches; at most { $most } can be printed. Publish it with fewer rounds.
news-sameFile = { $file } is the name of both files: give the workbook another one.
news-printNotProved = Not printed: the words do not make the chart. { $problem }
news-printRefused = Not printed: the chart has error findings.
news-notProved = Not published: the words do not make the chart. { $problem }
news-refused = Not published: the chart has error findings.
news-words = Saved the words to { $file }
news-picture = Saved the picture to { $file }
news-notWritten = { $file } was not written.
job-printers = Looking for printers…
job-pages = Making the pages…
job-print = Printing { $title }…
news-noPrinter = This machine has no printer: publish the pattern instead, and print the file elsewhere.
news-pages = { $pages ->
    [one] 1 page is ready for the printer.
   *[other] { $pages } pages are ready for the printer.
    }
news-printed = { $title } is with the printer.
news-printCancelled = Cancelled; nothing was printed.
news-printStopped = Cancelled; the printer was told to throw away what it had.
news-notPrinted = Not printed: the printer does not answer.
news-pagesBroken = Not printed: the pages could not be made.
