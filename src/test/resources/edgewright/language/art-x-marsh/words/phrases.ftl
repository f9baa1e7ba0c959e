# The phrases of an invented language: the number stands after the stitch, the group in double brackets, the corner before its
# word, the multiple behind what is added to it.

runs-next = { $list } · { $next }
clauses-next = { $list } ¦ { $next }
sentences-next = { $list } { $next }
counts-next = { $list } · { $next }
sides-next = { $list } še { $next }

sentence = { $text }!

heading-TERMS = Mål
heading-NEEDS = Tärvet
heading-DESIGNER_NOTES = Från vävaren
heading-NOTES = Anmärk
heading-ABBREVIATIONS = Kortörd
heading-SET_UP = Början
heading-JOINING = Fästning
heading-ROUNDS = Vårven
heading-COUNTS = Tälningar
heading-BACK = Båksida
heading-TECHNIQUES = Knöpor
heading-FINISHING = Slütet

designer = { $designer } { designer-word }
designer-word = ritåde dettä
left-hand = { left-word }!
left-word = För vänstra händer
draft = { draft-word }: ej än verkad!
draft-word = UTKÄST
piece = { piece-word }: { $counts } I { $round } talt, i vårv~{ $changing } rättad!
piece-word = För ett stycke ånly

entry = { $word } = { $text }
yarn-entry = { yarn-word } { $id }
yarn-word = Gårn

base-title = { base-word }
base-word = Nollvårv
round-title = { $round }:te { round-word } – { $yarn }
round-label = { $title }:
round-word = vårv
rounds-two = { $first } { rounds-and-word } { $last }:te { rounds-word } – { $yarns }
rounds-and-word = še
rounds-more = { $first } { rounds-to-word } { $last }:te { rounds-word } – { $yarns }
rounds-to-word = fram till
rounds-word = vårven
yarns-next = { $list } · { $next }
in-turn = { in-turn-word } → { $yarns }
in-turn-word = växlande
yarn-id = { $id } { yarn-id-word }
yarn-id-word = gårnet

run = { $stitch }~× { $count }
chains = { $stitch }~× { $count } ({ $missed }~{ $miss })
sts = { $sts ->
    [one] { st-word }~{ $sts }
    [few] { few-word }~{ $sts }
   *[other] { sts-word }~{ $sts }
    }
st-word = mäsk
few-word = mäski
sts-word = mäskor
group = « { $steps } » { repeat-word } { $upTo }
repeat-word = åter
bracket = { $times } [{ $steps }]
bracket-outer = { $times } ‹{ $steps }›
times = { $count ->
    [2] { twice-word }
   *[other] { $count }~{ times-word }
    }
twice-word = tvenne
times-word = gånger
every = { every-word } { $stitch }
every-to = { every-word } { $stitch } { $upTo }
every-word = överallt
to-corner = { to-corner-word }
to-corner-word = änd hörnan
to-last = { $last ->
    [1] { to-last-word }~{ last-st-word }
   *[other] { to-last-word }~{ last-sts-word }~{ $last }
    }
to-last-word = tills där blir
last-st-word = sista mäsken
last-sts-word = sista mäskor
corner = { $chains } { corner-word }
corner-as-told = { corner-word }
corner-word = på hörnan
corner-chains = { $stitch }~× { $count }

alike = { $work } ¦ { $corner }!
as-told = { as-told-word }~{ $round }!
as-told-word = lik vårv
all-sides = { all-sides-word }:
all-sides-word = Fyra sidor lika

column-round = Vårv
column-yarn = Gårn
column-from = Ur hörnan på
column-repeat = Återtäl
column-to = Intill hörnan
column-counts = Mäsktal
none-cell = inget
repeat-cell = { $upTo } ¦ { $steps }

marker = { $title } → { $round } { $edge } { in-stitch-word }~{ $number } [{ corner-is-one-word }]!
marker-all = { marker-word }
marker-odd = { marker-word } { odd-word }
marker-even = { marker-word } { even-word }
marker-word = Märke
odd-word = för udda vårv
even-word = för jämna vårv
in-stitch-word = mäsk
of-base = { of-base-word }
of-base-word = grundvårvets
of-round = { $round }:te { of-word }
of-word = vårvets
corner-is-one-word = hörnlänken är ett
marked = { $step }~{ start-mark-word }
start-mark-word = ¤
start-after = { $sts } { after-marker-word } { start-word }!
start-word = börja
after-marker-word = efter märket
at-a-corner = { at-a-corner-word }!
at-a-corner-word = Börja ur en hörna
from-inside-word = ur hörnan

edge-TOP = öfre kanten
edge-LEFT = vänstra kanten
edge-BOTTOM = nedre kanten
edge-RIGHT = högra kanten

puts-right = { puts-right-word }; { begin-top-word }!
puts-right-word = Vårvet rättar tälen
begin-top-word = börja öfverst
along = { $edge } { along-word }, { from-inside-word } → { $steps } ¦ { $corner }!
along-word = längs
two-in-one = { in-next-word } { $run }
one-and-one = { in-next-word } { $first } { one-and-one-word } { $second }
one-and-one-word = še
in-next-word = i samma mäsk

size-counts = { $counts }!
counts-of-rounds = { $counts }!
counts-of-rounds-next = { $list } ¦ { $next }
counts-growing = { in-first-word }~{ $first } { $counts } ¦ { then-word } { more-word }~{ $more }!
in-first-word = i vårv
then-word = senare
more-word = mera varje vårv
size-counts-way = { $way } → { $counts }!
size-counts-of = { $way } → { $counts } [{ $multiple }]!
size-multiple = { $multiple } ({ $way })!
sts-each = { sts-word }~{ $sizes }
sizes = { $others }~›~{ $first }
others-next = { $list }~/~{ $next }
counted-STITCHES = utan hörnlänkar
counted-WITH_CHAINS = inklusive hörnlänkar
side-count = { $sts } på { $sides }
sideName-TOP = öfre
sideName-LEFT = vänstra
sideName-BOTTOM = nedre
sideName-RIGHT = högra
multiple-any = { any-word }
any-word = vilket tal som helst
multiple = { $of } { multiple-word }
multiple-plus = { $plus }~{ plus-word } { $of } { multiple-word }
multiple-word = gångad
plus-word = utöver
with-examples = { $multiple }~{"{"}{ $examples } { such-as-word }{"}"}
such-as-word = till öga
with-fewest = { $multiple } ({ at-least-word }~{ $fewest })
at-least-word = minst

back-hook = { $mm } { mm-word } { back-hook-word }!
back-hook-word = tjock nål för båksidan
mm-word = millimeter
back-base = { back-base-word }!
back-base-word = Båksidans nollvårv
back-title = { $round }:te { back-round-word }!
back-title-as = { $round }:te { back-round-word }, { as-round-word } { $front }:te { of-front-word }!
back-round-word = båkvårv
as-round-word = tal som
of-front-word = framvårv
back-titles = { $first } { rounds-to-word } { $last }:te { back-rounds-word }!
back-titles-as = { $first } { rounds-to-word } { $last }:te { back-rounds-word }, { as-rounds-word } { $fronts }:te { of-front-word }!
back-rounds-word = båkvårvar
as-rounds-word = tal som vårvarna
back-fronts-next = { $list } + { $next }
back-counts-growing = { in-first-back-word }~{ $first } { $counts } ¦ { then-word } { more-word }~{ $more }!
in-first-back-word = i båkvårv
back-as-before = { as-before-word } { $round }:te!
as-before-word = Verkas lik båkvårv
back-every = { between-corners-word } { $stitch } ¦ { back-corner-word } { $before } + { $chains } + { $after }!
between-corners-word = emellan hörnen
back-corner-word = i hörnan
back-joining = { joining-word }! { through-word } { $stitch } ¦ { no-chains-word }!
joining-word = Hopvårv
through-word = genom båda lagren öfverallt
no-chains-word = inga länkar
