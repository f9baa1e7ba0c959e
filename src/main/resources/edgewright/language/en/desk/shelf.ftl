# The shelf of motifs. An ampersand stands before the letter that works as mnemonic.

shelf-empty = The shelf is empty. Mark stitches, then put them here.
shelf-unreadable = { $file } cannot be read
shelf-keep = &Put what is marked here...
shelf-keep-tip = Keep the marked stitches as a motif, in a file of its own with the settings
shelf-name = Name of the motif
shelf-title = Put on the shelf
