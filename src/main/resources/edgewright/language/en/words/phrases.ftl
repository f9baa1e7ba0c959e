# What the reader reads of a pattern. The writer fills a phrase in; the reader holds the text against the same phrase, so the
# order of its gaps and all its signs are law for both. A word that can be spelled in more than one way is a message of its own,
# and spellings.ftl lists the other ways under the same key. The signs named there as soft may be left out by whoever types.
# A number that one variant of a phrase leaves out is 1 there.

# Lists. Nothing may stand before $list or after $next.
runs-next = { $list }, { $next }
clauses-next = { $list }; { $next }
sentences-next = { $list } { $next }
counts-next = { $list }, { $next }
sides-next = { $list } and { $next }

# $text: a sentence without its end
sentence = { $text }.

# The parts of a pattern
heading-TERMS = Terms
heading-NEEDS = What you need
heading-DESIGNER_NOTES = From the designer
heading-NOTES = Notes
heading-ABBREVIATIONS = Abbreviations
heading-SET_UP = Set-up
heading-JOINING = Joining and closing a round
heading-ROUNDS = Rounds
heading-COUNTS = Stitch counts
heading-BACK = Back layer
heading-TECHNIQUES = Techniques
heading-FINISHING = Finishing

# The head of a pattern
designer = { designer-word } { $designer }
designer-word = Designed by
left-hand = { left-word }.
left-word = For makers who crochet with the left hand
draft = { draft-word }: not yet to be worked.
draft-word = DRAFT
# $round: the counting round; $counts: what its sides have; $changing: the changing round
piece = { piece-word }: the one with these sides in { $round }. { $counts } The counts are put right in round~{ $changing }.
piece-word = For one piece only

# What you need, and the abbreviations: a word and what is said of it
entry = { $word }: { $text }
yarn-entry = { yarn-word } { $id }
yarn-word = Yarn

# The names of rounds. $yarn: its name, or yarn-id where the name would not stand out; $title: round-title
base-title = { base-word }
base-word = Base round
round-title = { round-word }~{ $round } ({ $yarn })
round-label = { $title }:
round-word = Round
# Two rounds, or more, that are worked alike; $yarns: yarns-next or in-turn
rounds-two = { rounds-word }~{ $first } { rounds-and-word }~{ $last } ({ $yarns })
rounds-and-word = and
rounds-more = { rounds-word }~{ $first } { rounds-to-word }~{ $last } ({ $yarns })
rounds-to-word = to
rounds-word = Rounds
yarns-next = { $list }, { $next }
in-turn = { $yarns } { in-turn-word }
in-turn-word = in~turn
yarn-id = { yarn-id-word } { $id }
yarn-id-word = yarn

# Along a side
run = { $count }~{ $stitch }
# $stitch: the chain; $missed: sts
chains = { $count }~{ $stitch }, { $miss }~{ $missed }
sts = { $sts ->
    [1] { $sts }~{ st-word }
   *[other] { $sts }~{ sts-word }
    }
st-word = st
sts-word = sts
group = *{ $steps }; { repeat-word }~* { $upTo }
repeat-word = rep from
# Brackets, and brackets that hold brackets. $times: times
bracket = ({ $steps }) { $times }
bracket-outer = [{ $steps }] { $times }
times = { $count ->
    [2] { twice-word }
   *[other] { $count }~{ times-word }
    }
twice-word = twice
times-word = times
every = { $stitch } { every-word }
every-to = { $stitch } { every-word } { $upTo }
every-word = in every st
to-corner = { to-corner-word }
to-corner-word = to corner
to-last = { $last ->
    [1] { to-last-word }~{ last-st-word }
   *[other] { to-last-word }~{ $last }~{ last-sts-word }
    }
to-last-word = to~last
last-st-word = st
last-sts-word = sts
# The corner with its chains, and as the base round has told it
corner = { corner-word }:~{ $chains }
corner-as-told = { corner-word }
corner-word = corner
corner-chains = { $count }~{ $stitch }

# A round that is worked alike on all sides
alike = { $work }; { $corner }.
# A round that is worked as one before it. No line may begin with the name of that round: it would begin a round
as-told = { as-told-word }~{ $round }.
as-told-word = as~round
all-sides = { all-sides-word }.
all-sides-word = Work this on all four sides

# The rounds in a table: the heads of its columns, a cell in which nothing is worked, and the cell of a repeat
column-round = Round
column-yarn = Yarn
column-from = From the corner
column-repeat = Repeat
column-to = To the corner
column-counts = Stitches
none-cell = none
repeat-cell = { $steps }; { $upTo }

# The marker above which rounds start. $title: marker-all, or marker-odd and marker-even; $round: of-base or of-round
marker = { $title }: { $edge }, { in-stitch-word }~{ $number } { $round } { corner-is-one-word }.
marker-all = { marker-word }
marker-odd = { marker-word } { odd-word }
marker-even = { marker-word } { even-word }
marker-word = Marker
odd-word = for odd rounds
even-word = for even rounds
in-stitch-word = stitch
of-base = { of-base-word }
of-base-word = of the~base~round
of-round = { of-word } { round-word }~{ $round }
of-word = of
corner-is-one-word = (the corner chain is 1)
# The mark stands in the words of a side where a round starts: before the step that is worked first, or at the end of a list.
# A sign of one token that stands for nothing else.
marked = { start-mark-word }~{ $step }
start-mark-word = ^
# Where a round does not start right above its marker. $sts: sts
start-after = { start-word } { $sts } { after-marker-word }.
start-word = Start
after-marker-word = after the marker
at-a-corner = { at-a-corner-word }.
at-a-corner-word = Begin at a corner
from-inside-word = from the corner

# 'Right side' would be the face of the fabric.
edge-TOP = top edge
edge-LEFT = left-hand edge
edge-BOTTOM = bottom edge
edge-RIGHT = right-hand edge

# A round in which stitches are added or lost
puts-right = { puts-right-word }. { begin-top-word }.
puts-right-word = This round puts the counts right
begin-top-word = Begin at the top edge
along = { along-word } { $edge }, { from-inside-word }: { $steps }; { $corner }.
along-word = Along the
two-in-one = { $run } { in-next-word }
one-and-one = { $first } { one-and-one-word } { $second } { in-next-word }
one-and-one-word = and
in-next-word = in the~next~st

# How many stitches a side has: { $counts } of each size, the first outside the brackets
size-counts = { $counts }.
# The counts of rounds that are worked alike: of each, or of the first, and by how much all grow. $first: its number
counts-of-rounds = { $counts }.
counts-of-rounds-next = { $list }; { $next }
counts-growing = { $counts } { in-first-word }~{ $first }, { then-word }~{ $more } { more-word }.
in-first-word = in~round
then-word = then
more-word = more on every side in each round
# In the base round: how they are counted, and of which multiple they are
size-counts-way = { $counts }; { $way }.
size-counts-of = { $counts }; { $way }; { $multiple }.
size-multiple = { $multiple }; { $way }.
sts-each = { $sizes }~{ sts-word }
sizes = { $first }~({ $others })
others-next = { $list }, { $next }
counted-STITCHES = corner chains not counted
counted-WITH_CHAINS = counted with one corner chain at each end
side-count = { $sides } { $sts }
sideName-TOP = top
sideName-LEFT = left
sideName-BOTTOM = bottom
sideName-RIGHT = right
multiple-any = { any-word }
any-word = any number
multiple = { multiple-word }~{ $of }
multiple-plus = { multiple-word }~{ $of } { plus-word }~{ $plus }
multiple-word = multiple~of
plus-word = plus
with-examples = { $multiple }, { such-as-word }~{ $examples }
such-as-word = such as
with-fewest = { $multiple }, { at-least-word }~{ $fewest }
at-least-word = at least

# The back layer
back-hook = { back-hook-word }: { $mm } { mm-word }.
back-hook-word = Hook for the back layer
mm-word = mm
back-base = { back-base-word }.
back-base-word = Back base round
back-title = { back-round-word }~{ $round }.
back-title-as = { back-round-word }~{ $round }, { as-round-word }~{ $front } { of-front-word }.
back-round-word = Back~round
as-round-word = same counts as round
of-front-word = of the front
# Back rounds that are worked alike. $first, $last: numbers; $fronts: the numbers of the rounds of the front
back-titles = { back-rounds-word }~{ $first } { rounds-to-word }~{ $last }.
back-titles-as = { back-rounds-word }~{ $first } { rounds-to-word }~{ $last }, { as-rounds-word } { $fronts } { of-front-word }.
back-rounds-word = Back~rounds
as-rounds-word = same counts as rounds
back-fronts-next = { $list }, { $next }
back-counts-growing = { $counts } { in-first-back-word }~{ $first }, { then-word }~{ $more } { more-word }.
in-first-back-word = in back~round
back-as-before = { as-before-word }~{ $round }.
as-before-word = Work as back~round
# $before, $after: the runs into the corner below, before and after the chains
back-every = { $stitch } { between-corners-word }; { back-corner-word }:~{ $before }, { $chains }, { $after }.
between-corners-word = in every stitch between the corners
back-corner-word = corner
back-joining = { joining-word }. { $stitch } { through-word }; { no-chains-word }.
joining-word = Joining round
through-word = in every stitch and every corner chain, through the back loops of both layers
no-chains-word = make no chains at the corners
