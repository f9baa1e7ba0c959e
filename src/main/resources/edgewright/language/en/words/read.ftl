# What is said where reading stops. $found: what stands there; $expected: one of the texts below

problem = line { $line }, column { $column }: '{ $found }', but expected { $expected }
problem-end = line { $line }, column { $column }: nothing follows, but expected { $expected }

# Under the key of a phrase or of a word stands what is said where that word should stand.
expected-terms = the terms of the pattern: 'UK terms' or 'US terms'
# $value: terms
expected-sameTerms = only one kind of terms, since the pattern says '{ $value }' before
expected-firstRound = 'Round 1'
# $value: number
expected-round = 'Round { $value }'
# $value: list of columns
expected-columns = a table with these columns: { $value }
# $value: number
expected-rowNumber = { $value }, the number of the next round, at the beginning of its row
# $value: number; $other: number
expected-cells = { $value } columns in this row, or { $other } where words run across it
expected-cellEnd = the next column
expected-cellWork = a number and a stitch, or 'none'
expected-cellRepeat = stitches and 'to last ... sts' or 'to corner', or 'none'
expected-cellCounts = how many stitches a side has, or 'none'
expected-cellNone = 'none', since there is no repeat before it
expected-cellCorner = the chains of the corner, since the base round does not say them
# $value: the least that it can be
expected-lastRound = the last of these rounds, { $value } or a later one up to which they are alike
# $value: how many rounds
expected-yarnOfEach = one yarn, { $value } yarns, or some that come in turn at least twice
# $value: the round that is worked as another
expected-asTold = a round before round { $value } that is worked alike on all sides and begins where this one does: at a corner, or above a marker
expected-oneBeginning = 'Begin at a corner', since the marker is put in one of these rounds
# $value: number
expected-firstOfThese = { $value }, the first of these rounds
# $value: how many rounds
expected-countOfEach = the counts of each of the { $value } rounds
# $value: number
expected-roundOrEnd = 'Round { $value }' or the end of the rounds
# $value: list of yarns
expected-yarnOf = one of the yarns: { $value }
expected-yarn = a comma and the yarn of the round
expected-otherYarn = another id, since a yarn has that one already
# $value: terms; $other: list of stitches
expected-stitch = a stitch in { $value }: { $other }
expected-item = a number and a stitch, an asterisk, or 'corner'
expected-repeat-word = a number and a stitch, or 'rep from *'
expected-every-word = 'in every st', or else a number before the stitch
expected-number = a number from 1 to 999999999
expected-count = a number of stitches
expected-oneGroup = no second asterisk in a round
expected-group = an asterisk
expected-asteriskBefore = an asterisk earlier in the round
expected-upTo = 'to last ... sts' or 'to corner'
expected-to-last-word = 'to last ... sts' or 'to corner'
expected-to-corner-word = 'to last ... sts' or 'to corner'
expected-last-st-word = 'st' or 'sts'
expected-last-sts-word = 'st' or 'sts'
# $value: the word for leaving a stitch out
expected-miss = '{ $value }' and as many stitches as there are chains
# $value: number
expected-missed = { $value }, as many stitches as there are chains
expected-cornerChains = 1, 2 or 3 chains
# $value: the chain
expected-chain = '{ $value }'
expected-edge = an edge: top, left-hand, bottom or right-hand
expected-in-stitch-word = 'stitch' and its number
expected-of-base-word = 'of the base round' or 'of round' and its number
expected-of-round = 'of the base round' or 'of round' and its number
expected-markerEnd = the end of what is said of the marker
expected-otherMarker = a marker for other rounds, since these have one
expected-bothMarkers = a marker for odd rounds and one for even rounds, in the same round
expected-markerBefore = a marker in the set-up, above which a round can start
expected-after-marker-word = 'after the marker'
expected-start-mark-word = the sign for the start of the round
expected-mark = the sign ^ where the round starts, since the set-up has a marker
expected-oneMark = no second sign for the start of the round
expected-noMark = no sign for a start, since this round begins at a corner
expected-noMarkInBrackets = no sign for the start of the round inside brackets
expected-along-word = 'Along the' and an edge
expected-otherWords = an edge that has no words yet
# $value: number
expected-chainsAsBefore = { $value } chains, as at the corner before
expected-timesNumber = a number from 2, how often the brackets are worked
expected-times-word = 'twice', or a number and 'times'
expected-twice-word = 'twice', or a number and 'times'
expected-noBracket = no third bracket inside two others
expected-change = a number and a stitch, two worked together, brackets, or 'corner'
expected-oneAndOne = 1, since each of the two is made once
expected-in-next-word = 'in the next st'
expected-two = 2, the stitches worked into one
expected-backEnd = the end of what is said of this round
expected-mm-word = the thickness of a hook, such as 4.5 mm
expected-hook = the thickness of a hook, such as 4.5 mm
# $value: number
expected-backNumber = 'Back round { $value }'
# $value: how many rounds
expected-frontOfEach = { $value } rounds of the front, one for each back round
# $value: number
expected-backBefore = the number of a back round before round { $value }
expected-between-corners-word = 'in every stitch between the corners'
expected-back-corner-word = 'corner:' with its stitches and chains
# $value: number
expected-sameArms = { $value }, as many stitches as before the chains
# $value: tall stitch; $other: plain stitch
expected-backStitch = '{ $value }' or '{ $other }'
# $value: stitch
expected-sameStitch = '{ $value }', the stitch of this round
# $value: the slip stitch
expected-slip = '{ $value }'
expected-through-word = 'in every stitch and every corner chain, through the back loops of both layers'
expected-work = some stitches before the corner
expected-multiple = 'multiple of' or 'any number'
expected-plus = 'plus', 'multiple of' or 'any number'
# $value: what would go with the other way of counting
expected-otherWay = { $value }, to agree with the other way of counting
# $value: multiple; $other: plus
expected-example = a multiple of { $value } plus { $other }
# $value: how many
expected-eachSize = { $value } numbers, one for each size
expected-fourSides = the stitches of all four sides
expected-otherSide = a side that has no number yet
# $value: the word or sign
expected-sign = '{ $value }'
expected-once = the counts of a round only once
expected-base-word = the corner of the base round, or its end
expected-baseEnd = the corner of the base round, or its end
