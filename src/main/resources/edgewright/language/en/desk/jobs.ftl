# What happens in the background, what came of it, and what is asked.

# Dialogs
files-charts = Charts (*.border.json)
files-open = Open
files-save = Save
files-saveTitle = Save the chart
files-nameless = border
files-more = { $problems ->
    [one] and one more problem
   *[other] and { $problems } more problems
    }
ask-title = Edgewright
ask-ok = OK
ask-mistake = Something went wrong in the program. The chart is as it was before; save it and go on. If it happens again, send the details below to the makers of the program.
ask-mistake-copy = &Copy the details
ask-unsaved = “{ $title }” has changes that are not saved.
ask-unsaved-save = &Save
ask-unsaved-discard = &Do not save
ask-unsaved-cancel = &Go on working
ask-replace = There is already a file { $file }.
ask-replace-yes = &Replace it
ask-replace-no = &Keep it
ask-changedOutside = { $file } has been changed by another program since it was opened here.
ask-changedOutside-yes = &Replace it
ask-changedOutside-no = &Keep it

# What happens in the background, and what came of it
job-open = Opening { $file }…
job-save = Saving { $file }…
job-broken = Something went wrong in the program.
news-begun = New chart: { $title }
news-opened = Opened { $file }
news-notOpened = { $file } was not opened.
news-saved = Saved { $file }
news-notSaved = { $file } was not saved.
news-goOn = The chart stays on the desk.
news-busy = Wait for the job that is running, or cancel it.

# What was made for others to read
made-shown = { $file } is being opened.
made-copied = No program of this machine shows it. Its path is on the clipboard: { $path }
made-notShown = No program of this machine shows it: { $path }
