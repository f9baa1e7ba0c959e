# What the window says: its title, its menus and its help. An ampersand stands before the letter that works as mnemonic.

# The title of the window
title = { $title } ({ $file }) – Edgewright
title-changed = { $title } ({ $file }, not saved) – Edgewright
title-noFile = no file yet
title-start = Start page – Edgewright

# Menus
menu-file = &File
menu-recent = &Recent charts
recent-item = { $place } { $file }
recent-none = No chart has been opened yet
menu-edit = &Edit
menu-stitch = S&titch
menu-draw = &Draw
menu-motif = &Motif
menu-shelf = &Shelf
menu-rounds = &Rounds
menu-yarnOfRounds = Work in &yarn
menu-cursor = Curs&or and marks
menu-side = S&ide
menu-piece = Pie&ce
menu-view = &View
menu-theme = Colours of the &desk
menu-typeSize = Size of le&tters
menu-help = &Help
menu-vision = &Colours as seen
menu-panes = &Panes

# Panes that are folded to one line
fold-findings = Findings: { $findings }
fold-words = Words
fold-side = Rounds and yarns
fold-yarns = Yarns
fold-tip = Fold or open the pane

# The charts on the desk
tabs = Charts on the desk
tab-changed = { $title } •
tab-heard-changed = { $title }, not saved
tab-close = Close { $title }

# The search of commands
search-title = Find a command
search-hint = Type what you want to do
search-query = What is looked for
search-found = Commands
search-none = No command has these words in its name, its menu or its description. Try fewer words.

# Actions
undo-of = &Undo: { $edit }
redo-of = &Redo: { $edit }

# Yarns
yarn-new = New yarn

# Names of edits
edit-properties = chart properties
edit-letters = round { $round } in letters

# What happens in the background, and what came of it
news-there = { $file } is open already.
news-closed = { $title } is off the desk.
news-busy = Wait for the job that is running, or cancel it.
news-mistakeAgain = The same mistake in the program was met again. Save the chart.

# Help
help-title = Help
help-drawing = How to draw
help-laws = The rules
help-keys = Keys
help-keys-or = { $key } or { $other }
help-keys-canvas = On the chart
help-keys-words = In the words
help-keys-everywhere = Everywhere
help-head-1 = What is on the desk
help-drawing-1 = One corner of the border with the side on each arm of it, seen from the right side of the fabric. The side at the top is worked from right to left up to the corner, the other one on from the corner. Round 1 is next to the piece. Squares on the diagonal are the corner chains; they belong to the corner and cannot be drawn on.
help-head-2 = Drawing stitches
help-drawing-2 = Choose a stitch and a tool above the chart and press on a square; keep the button held to draw on, which is one edit, and Esc takes it back. Before the button goes down you see what would land: framed, with what it would break in red, and how much of both in the line below. The brush works every stitch it comes over, the line and the rectangle what lies between their ends, the fill all like stitches that hang together; the pointer works nothing. The right button takes out. With Alt, a press picks up the stitch under the mouse. With Shift, it marks. The middle button moves the chart. By keys, Enter puts the tool down at the cursor, the arrow keys go on with it, and Enter takes it off.
help-head-3 = One repeat stands for all
help-drawing-3 = The repeat is drawn several times and on both arms. Draw in one and all of them change; small corners show where else the stitch at the cursor is.
help-head-4 = Mirrors
help-drawing-4 = Mirrors work every stitch at its images too, and show their axes on the chart: across the corner, so that both arms are alike; across the middle of the repeat; and half a repeat on. Any of them go together: what lands is whatever can be reached through all of them. Where the two sections at the corner differ in length, a mirror across the corner ties some of their stitches to the repeat; the frames show it before you draw.
help-head-5 = Marking and copying
help-drawing-5 = Draw with the marker, press with Shift and draw on, or hold Shift with the arrow keys: this marks rounds and columns, also from one arm round the corner to the other. A stitch key then works all of them, Delete takes them all out, Esc clears the marks. With the marker you carry what is marked: draw it to where it is to lie, round the corner too, where it is rotated with its arm; with Ctrl it also stays where it was, and Esc puts it back. The Motif menu flips it, works it on the other arm, and repeats it along the side. Copy and Paste work it again from the cursor on, outwards and in working order, in this chart or another; what does not fit is named, and Paste and add rounds makes room. What is copied is lines of letters, so it can be pasted into an e-mail too. Put a motif on the shelf and it is there for every chart.
help-head-6 = Fabric and marks
help-drawing-6 = The colour of a square is what will be seen: its own yarn, or that of the round above where a long stitch covers it. The mark says what to do: a low arc is back-loop, a cross plain, an oval a chain, and a tall stem with a slash a long stitch, drawn down to where it lands.
help-head-7 = What is seen of the border
help-drawing-7 = View, One side shows one side from corner to corner instead, a row a round, as it is worked; everything is drawn there in the same way, and Rotate shows the next side. The rulers along the chart have number and yarn of each round, the stitches of the round of the cursor, counted from the corner just turned and before the next one back from it, and an arrow along each repeat. Border around its piece is a window of its own: the whole border as it will look, for the repeats that you give, live while you draw. For the left hand shows everything in a mirror. Colours as seen shows greys, or what people see who lack one kind of cones; it goes by a published model and shows what gets lost, not more. All of it is remembered.
help-head-8 = Room for the chart
help-drawing-8 = Ctrl and the wheel zoom to the mouse in fine steps; hold Space and drag to move the chart. The arrow between two panes, or Alt with 1 to 4, folds a pane to one line and opens it again; Alt and 0 fold them all. A chart that is shown whole stays so when the room changes.
help-head-9 = The words below the chart
help-drawing-9 = Below the chart stand the rounds in words, as the written pattern has them; they follow every edit. Point at words, and their stitches light up in the chart; point at a stitch, and its words do. Press on words, and the cursor goes to their first stitch. When the words have the focus, the arrow keys walk a reading mark along the round as a maker works it: stitch by stitch, with Ctrl step by step, up and down from round to round. Enter puts the cursor there; Esc goes back to the chart.
help-head-10 = What hands cannot work
help-drawing-10 = The chart is checked after every edit. What cannot be worked is ringed, with its number in the list of findings; neighbouring squares share one ring, where 3+4 means finding 3 and four more. Choose a finding to go to its stitch and read why. Point at what helps, or go to it with Enter and the arrow keys, and the chart shows it, with what changes and how many findings remain; leave it, and nothing has happened. The button does it. Mend all of this kind does it for every finding of the same rule, as one edit, and says what it could not mend. Above the list, choose one rule or one round, or have the findings in groups.
help-head-11 = Rounds and columns
help-drawing-11 = When rounds are inserted, deleted or moved, the stitches of all others stay in their fabric columns. Columns are inserted and deleted in the section where the cursor is, and the corners keep their shape. To change the repeat or the corner sections as a whole, use Side, Change the side.
help-head-12 = Counts
help-drawing-12 = The list of rounds counts the stitches of a side for the number of repeats that you give there. Many makers count a corner chain at each end as part of the side; then every count is 2 higher. Choose one way; wherever a count is shown, the way is named.
help-head-13 = Fitting a piece
help-drawing-13 = Piece, Fit to a piece draws the piece as a box. Type what you counted at its sides, and the round in which you counted: the counts that come out even, the stitches to add or lose and the rounds to do it in appear at once. For a piece with no round on it yet, measure its edges or count its stitches and rows, and it says how many stitches to pick up. Left-handed goes round the other way. Keep counts keeps what was counted in a round with the chart, the front and the back; it is there again when the chart is opened. Save its words and Publish for it make the pattern for this piece alone, with its counts and the round that puts them right.
help-head-14 = Where rounds start, and the back layer
help-drawing-14 = File, How it is made says where the yarn of each round is joined, on which sides, whether the border has a back layer, and with which hooks; Rounds, Start the rounds here uses the column of the cursor. The words then begin at that stitch and come back to it. Piece, Round guide shows the round of the cursor as a maker works it, with its bit of the chart, what to look for in it, and boxes to tick.
help-head-15 = Yarn
help-drawing-15 = Amounts and contrast, under the yarns, says how much of each yarn a piece of any size takes, which two are hard to tell apart and which nearby colour would do. Enter what you have in hand, and it says whether that is enough, and if not, which rounds can be worked in another yarn without changing the picture.
help-head-16 = Publishing
help-drawing-16 = Prove the words reads the pattern back as a maker does and works it loop by loop, for as many sizes of piece as you give. Publish makes a pattern from the chart and its words. A chart with errors is published only as a draft, and only if you ask for one. The pages are shown while you choose: in large print, in black and white for a photocopier, for the left hand, in UK terms, US terms or both, with the chart on larger paper or as a poster. Save the words makes a text or a page for the browser, with the rounds in sentences or as a table. When a pattern, a picture or a text is written, two buttons at the foot of the window open it or show its folder; so does the File menu. Print the pattern shows the same pages with the same choices, and sends them to a printer.
help-head-17 = Reading a pattern text
help-drawing-17 = File, Read a pattern text takes a text by anybody: paste it or open it, then press Read. Each line stands there with what it was understood as, and what is not understood is named with its line and column. Choose a line, and the rounds that it makes are framed in the picture. The text can be drawn as a new chart, or compared with the chart on the desk, round by round. If it does not say whether it is in UK or US terms, you are asked, and see what comes of either.
help-head-18 = Several charts, and every command
help-drawing-18 = Each chart lies on a tab of its own, with its own edits, cursor and view; with one chart there is no row of tabs. Ctrl with the Tab key goes on to the next. What is copied in one chart can be pasted in another. Help, Find a command searches everything that can be done: type a word, and each command stands there with its key and its menu, or with why it is not possible now; Enter does it. F6 takes the keys on to the next part of the window, which then has a line along its top. View, Colours of the desk has a light, a dark and a high contrast theme; View, Size of letters makes all letters of the desk up to twice as large. A screen reader finds the chart as a table: a row for each round, a column for each stitch in working order, and the square of the cursor is read with its round, section, stitch, yarn and findings.
help-head-19 = Work that is not saved
help-drawing-19 = Every edit is kept on the disk within a second, beside your saved chart. If the program ends before you save, the next start shows the lost work beside what is saved: take it up, keep the saved chart, or keep both. Nothing is deleted unless you say so. If another program changes the file of the chart, you see at once what differs, and reload it, keep both, or go on; Undo leads back from a reload. To open a chart, you can also drop its file on the window.
help-head-20 = The start page
help-drawing-20 = Without a chart the desk begins with the start page: three first steps, the charts you worked on last, and the samples, each with a little picture of its fabric. The arrow keys walk over it, Enter opens, Esc goes to the chart. A sample is opened as a chart without a file, so the sample itself stays as it is. A chart whose file is gone says so; press it and it is taken off. File, Start page brings the page back.
about-title = About Edgewright
about-text =
    Edgewright designs, checks and publishes borders in overlay mosaic crochet, worked in rounds around a blanket.

    Apache License 2.0. Typefaces: Inter and Atkinson Hyperlegible Next, both under the SIL Open Font License.
