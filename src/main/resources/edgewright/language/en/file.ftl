# Why a file cannot be read as a chart, or not be written. One sentence each: what is there, then what was expected.
# The values are those of FileFault, JsonFault and ChartFault.

line = line { $line }
roundOfMember = (round { $round })

# A file that was never meant as a chart. $problem: what was found and expected
notAChartIn = { $file } is not a chart file: { $problem }
notAChartHere = this is not a chart file: { $problem }

# $choices: the first of those that there are
choice-many = { $choices } …

shape-OBJECT = an object in braces
shape-LIST = a list in square brackets
shape-TEXT = text in double quotes
shape-NUMBER = a number
shape-WHOLE_NUMBER = a whole number
shape-TRUE_OR_FALSE = true or false
shape-NULL = null

file-NOT_FOUND = there is no such file; expected one to read
file-IS_A_FOLDER = this is a folder; expected a file
file-NOT_READABLE = the system does not let you read it; expected a file that you may read
file-NOT_WRITABLE = the system does not let you write it; expected a file and a folder that you may write to
file-NOT_CREATED = no file can be made here; expected a folder in which files can be made
file-NOT_REPLACED_AT_ONCE = no file can be replaced in one step in this folder, so a saving that is interrupted could leave half a file; expected a folder on a disk of this machine
file-NOT_A_JOURNAL = this is no journal of unsaved work; expected one
file-JOURNAL_NOT_WHOLE = the journal of unsaved work is torn or was changed; expected it as it was written
noFolder = there is no folder '{ $folder }'; expected one to write into
file-NOT_A_FILE = this is not an ordinary file; expected one, or none yet
system = the system cannot reach it ({ $words }); expected a file that it can reach
tooLarge = the file is too large; expected at most { $bytes } bytes
file-EMPTY = the file is empty; expected a chart
file-NOT_UTF8 = bytes that are not UTF-8; expected text in UTF-8
file-NOT_TEXT = its bytes are not UTF-8; expected text in UTF-8 that begins with '{"{"}'
noObject = it begins with '{ $found }', expected '{"{"}'
endsEarly = the file ends too early; expected { $expected }
notJson = at column { $column } found '{ $found }', expected { $expected }
moreAfterEnd = at column { $column } found '{ $found }' after the end of the chart; expected nothing more
twice = the member is here for the second time, first in line { $line }; expected it once
tooDeep = objects and lists are nested too deeply; expected at most { $levels } levels
longNumber = the number is too long; expected at most { $characters } characters
notAChart = expected a member 'format' with the text '{ $format }'
newerVersion = the file was written by a newer program (version { $version } of its format); expected version { $newest } at most
noSuchVersion = found { $version }, expected version { $newest }
missing = the member is missing; expected { $expected }
wrongShape = found { $found }, expected { $expected }
notInRange = found { $found }, expected a whole number from { $least } to { $most }
notAMeasure = found { $found }, expected a number from { $least } to { $largest }
noSuchChoice = found '{ $found }', expected { $choices }
notAColour = found '{ $found }', expected a colour as #rrggbb
notAnId = found '{ $found }', expected an id of 1 to { $longest } letters or digits
sameId = the id '{ $id }' belongs to another yarn already; expected one of its own
noSuchYarn = no yarn has the id '{ $id }'; expected { $ids }
noSuchStitch = no stitch has the letter '{ $letter }' (place { $place }); expected { $letters }
noSuchColumn = found { $column }, expected a column from 1 to { $last }, which is the end of the first repeat
noName = the size has no name; expected one that is not blank
sameName = the name '{ $name }' belongs to another size already; expected one of its own
sameRound = round { $round } is counted twice; expected each round once
notClosing = a side of { $found } stitches does not come out even; expected { $nearest }
bothOf = the size has both; expected { $members }, one of them
noneOf = the size has no numbers; expected { $members }
notAMotif = this is no motif; expected an object in braces with the member 'format' and the text '{ $format }' in it
notLikeFirst = round { $round } of the motif is not like its first round; expected as many letters, and the corner at the same letter
notAnImprint = this is no imprint; expected an object in braces with the member 'format' and the text '{ $format }' in it
noWords = expected words, { $longest } characters at most
notAWebAddress = found '{ $found }', expected a web address that begins with https:// or http://, or no text
wrongNumber = found { $found }, expected { $least } to { $most }
# Where there can be so many only.
wrongNumberOfAll = found { $found }, expected { $most }

# What can be expected where a text is not JSON.
token-VALUE = a value
token-VALUE_OR_END = a value or ']'
token-NAME = the name of a member in double quotes
token-NAME_OR_END = the name of a member in double quotes or '{"}"}'
token-WHOLE_NAME = a name of whole characters (no half of a surrogate pair)
token-COLON = ':'
token-COMMA_OR_BRACE = ',' or '{"}"}'
token-COMMA_OR_BRACKET = ',' or ']'
token-TEXT_PART = a character that can stand in a text (a line break is written \n, a backslash \\)
token-TEXT_END = the double quote at the end of the text
