# Photographs, texts and imprint of the designer's own.
edit-own = own pages
title = Own pages
accept = C&hange
tab-photos = Photographs
tab-texts = Texts
tab-imprint = Imprint
list-photos = Photographs
list-texts = Texts
remove = Ta&ke out
up = Move &up
down = Move &down

photo-add = &Add a photograph …
photo-alternative = In &words, for those who do not see it
photo-caption = &Caption
photo-at = &Place
photo-about = A photograph from elsewhere is copied beside the chart. Its private data are left out in print.
photo-unsaved = Save the chart first: photographs lie in its folder.
photo-taken = There is another file '{ $file }' beside the chart; expected a photograph with a name of its own.
photo-notCopied = The photograph '{ $file }' could not be copied beside the chart; expected a folder that you may write to.
files-photos = Photographs (JPEG, PNG)
at-COVER = First page
at-GALLERY = Pages of photographs
at-STITCHES = Beside the abbreviations
at-START = Beside the base round
at-JOINING = Beside joining and closing a round
at-FINISHING = Beside finishing

text-add = &Add a text
text-untitled = (no title yet)
text-title = &Title
text-text = Te&xt
text-about = The first text stands before the pattern, all others after it. *Emphasis*, lists that begin with - or 1. and [links](https://…) are understood.

imprint = &Imprint file
imprint-about = A file NAME.imprint.json in the folder of the chart. It says who publishes, and serves all your patterns.

objection-alternative = Say in words what '{ $file }' shows, for those who do not see it.
objection-text = Each text needs a title and words.
objection-many = There are too many: at most 16 photographs and 24 texts.
