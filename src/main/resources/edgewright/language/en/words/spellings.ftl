# What the reader understands beside what the writer writes. Bars part the spellings of one thing; capital letters do not matter.
# ∅ is for a word that may be left out. Under the key of a phrase stand other spellings of it; a key also-PHRASE-NUMBER is
# another form of that phrase, with gaps.

number-words = one | two | three | four | five | six | seven | eight | nine | ten | eleven | twelve
# Signs that part, and may be left out or be exchanged for one another
soft-signs = , | ; | . | :
# Signs between the number of a round and its yarn, after the yarn, those that end the name of a yarn that is in no list, and those
# between the yarns of rounds that are worked alike
yarn-before = , | ( | - | – | —
yarn-after = )
yarn-ends = . | , | : | ; | ( | )
yarn-between = , | &
# Signs between a word and what is said of it
entry-signs = : | =

heading-TERMS = Terms used | Terminology
heading-NEEDS = You need | You will need | Materials | Yarn | Yarns
heading-DESIGNER_NOTES = Designer's notes | About this border
heading-NOTES = Pattern notes
heading-ABBREVIATIONS = Abbreviations used
heading-SET_UP = Set up | Setup
heading-JOINING = Joining and closing | Joining
heading-ROUNDS = Border | The border | Instructions | Pattern
heading-BACK = The back layer
heading-FINISHING = Finish | To finish

designer-word = Design by
# In the line after the title
designer-short = by
left-word = for left-handed makers | for the left hand | left-handed

terms-UK = UK | U.K. | British
terms-US = US | U.S. | American | USA
terms-between = crochet | crocheting | English
terms-word = terms | terminology

round-word = rnd | rd
also-round-title-1 = { round-word } { $round }, { $yarn }
rounds-word = rnds | rds
rounds-and-word = &
rounds-to-word = - | – | —
also-rounds-two-1 = { rounds-word } { $first } { rounds-and-word } { $last }, { $yarns }
also-rounds-more-1 = { rounds-word } { $first } { rounds-to-word } { $last }, { $yarns }
in-turn-word = in turns | by turns
as-told-word = as rnd | as rd | work as round | work as rnd | same as round | same as rnd
in-first-word = in rnd | in rd
more-word = more on each side in every round | more on every side in every round | more on each side in each round | more a side in each round | more on every side each round

also-corner-chains-1 = { $stitch } { $count }
also-chains-1 = { $stitch } { $count }, { $miss } { $missed }
st-word = stitches | stitch | sts | ∅
sts-word = stitches | stitch | st | ∅
repeat-word = repeat from
times-word = x | ×
every-word = in every stitch | in each stitch | in each st
to-corner-word = to the corner
to-last-word = to the last
last-st-word = stitches | stitch | sts
last-sts-word = stitches | stitch | st
corner-word = corners
from-corner = { from-word }: { $work }
from-word = From the corner | from corner | ∅
all-sides-word = work on all four sides | repeat on all four sides | on all four sides | work this on all sides | work on all sides | repeat on all sides | on all sides | work this on all 4 sides | work on all 4 sides | repeat on all 4 sides | on all 4 sides | ∅

marker-word = put a marker | stitch marker
odd-word = of odd rounds | for rounds with an odd number
even-word = of even rounds | for rounds with an even number
in-stitch-word = in stitch | st | in st
of-base-word = of base round
corner-is-one-word = ( corner chain is 1 ) | ∅
start-word = begin
after-marker-word = past the marker
at-a-corner-word = start at a corner | begin at any corner | start at any corner
from-inside-word = from corner | ∅
edge-TOP = top side | top
edge-LEFT = left edge | left-hand side | left side | left
edge-BOTTOM = bottom side | bottom
edge-RIGHT = right edge | right-hand side | right side | right

puts-right-word = put the counts right in this round
begin-top-word = begin with the top edge | begin at the top | begin with the top | ∅
along-word = along
in-next-word = in the next stitch | in next st | in next stitch

# Forms in which nobody but a typist says how many stitches a side has, or an older pattern: in two ways of counting
also-size-counts-of-1 = { $counts }; { $way } ({ $multiple })
size-in-brackets = ({ $sts } { per-side-word }, { $way })
size-counts-bare-of = { $counts } ({ $multiple })
also-side-count-1 = { $sides }: { $sts }
size-side-count = { this-side-word }, { $way }: { $sts }
this-side-word = side | sides
size-both-STITCHES = { side-word }: { $first }; { way-WITH_CHAINS }: { $second }
size-both-WITH_CHAINS = { side-word }, { way-WITH_CHAINS }: { $first }; { way-STITCHES }: { $second }
size-two-ways = { side-word }, { $way }: { $first }; { $other }: { $second }
size-one-way = { side-word }, { $way }: { $first }
also-with-examples-1 = { $multiple } ({ $examples })
plus = { plus-word } { $plus }
per-side-word = a side | on each side | each side | on a side | per side | ∅
side-word = side | sides | ∅
each-side = each side | every side | all sides | side | sides
such-as-word = for example | e.g.
any-word = any number of stitches | any number of sts
multiple-word = a multiple of | mult of
plus-word = +
way-STITCHES = stitches only | sts only | corner chains not counted
way-WITH_CHAINS = with one corner chain at each end | counted with one corner chain at each end
counted-STITCHES = stitches only | sts only
counted-WITH_CHAINS = with one corner chain at each end

back-base-word = base round of the back
back-round-word = back rnd | back rd
back-rounds-word = back rnds | back rds
as-rounds-word = same counts as rnds | as rounds | as rnds
in-first-back-word = in back rnd | in round | in rnd
as-round-word = same counts as rnd | as round | as rnd
of-front-word = ∅
as-before-word = work as back rnd | as back round | as back rnd
between-corners-word = in each stitch between the corners
through-word = in every stitch and every corner chain through the back loops of both layers
back-corner-word = corners
no-chains-word = ∅
