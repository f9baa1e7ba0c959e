# Unsaved work that is kept against a crash, files that others change or have open, and what is asked about them.

# Lost work. $file: the name of the file, $title: of the chart
lost-title = Work that was not saved
lost-ofFile = The last time, the program ended before “{ $title }” was saved in { $file }. What is framed differs.
lost-ofChanged = The last time, the program ended before “{ $title }” was saved in { $file }, and another program has changed that file since. What is framed differs.
lost-ofGone = The last time, the program ended before “{ $title }” was saved in { $file }, and that file can no longer be read.
lost-ofNew = The last time, the program ended before “{ $title }” was saved. It has no file yet.
lost-saved = Saved
lost-lost = Not saved
lost-savedAt = Saved { $time }
lost-edits = { $edits ->
    [one] 1 edit, { $time }
   *[other] { $edits } edits, the last one { $time }
    }
lost-takeUp = &Take up the lost work
lost-keepBoth = Keep &both
lost-keepSaved = Keep the &saved chart, delete the lost work
lost-delete = &Delete the lost work
lost-later = Ask &later
# A file that cannot be read as lost work. $file: where it lies, $problem: what is wrong with it
lost-broken = Lost work could not be read again: { $problem }. Its file is kept: { $file }

# A file that others have changed
changed-title = Changed by another program
changed-sentence = { $file } has been changed by another program while it is open here. What is framed differs.
changed-here = On the desk
changed-there = In the file
changed-reload = &Reload the file
changed-keepBoth = Keep &both
changed-goOn = &Go on with the chart on the desk

# A chart that is open twice
openElsewhere = { $file } is open in another window of Edgewright too. When one of them saves, the other asks what to do about it.

# What differs
differ-none = Both are the same.
# $rounds: one of the two below
differ-stitches = { $stitches ->
    [one] 1 stitch differs, in { $rounds }.
   *[other] { $stitches } stitches differ, in { $rounds }.
    }
differ-yarn = The yarn differs in { $rounds }.
differ-rounds = { $count ->
    [one] round { $rounds }
   *[other] rounds { $rounds }
    }
differ-run = { $first }–{ $last }
differ-manyRounds = { $rounds } rounds
# The right chart, beside the left one
differ-more = { $rounds ->
    [one] The chart on the right has 1 round more.
   *[other] The chart on the right has { $rounds } rounds more.
    }
differ-fewer = { $rounds ->
    [one] The chart on the right has 1 round fewer.
   *[other] The chart on the right has { $rounds } rounds fewer.
    }
differ-otherwise = Yarns, texts or the making differ.
picture = { $which }: the chart as a picture

# Names of edits
edit-takeUp = lost work
edit-reload = the file as others changed it

# Words in the names of files
word-lost = recovered
word-mine = mine

# What came of it
news-takenUp = The lost work is on the desk. It is not saved yet.
news-lostKept = The lost work is in { $file }
news-lostDeleted = The lost work was deleted.
news-lostLater = The lost work is kept until the next start.
news-reloaded = Reloaded { $file }
news-sameAgain = { $file } was changed by another program, and holds the chart as it is here.
news-asBefore = { $file } holds again what it held before another program changed it.
news-gone = { $file } is not there any more. Save the chart to make it again.
news-unreadable = { $file } was changed by another program, and cannot be read as a chart now.
news-goOn = The chart on the desk stays as it is. Saving it asks before it replaces { $file }.
news-notKept = Work is not kept against a crash now: { $problem }
