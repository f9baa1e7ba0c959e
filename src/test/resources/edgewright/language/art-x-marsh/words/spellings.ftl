# What a reader of the invented language understands beside what the writer writes.

number-words = ett | två | tre | fyra | fem | sex | sju
soft-signs = · | ¦ | ; | , | ! | :
yarn-before = – | -
yarn-after = )
yarn-ends = ! | ¦ | ; | ·
yarn-between = ·
entry-signs = = | :

heading-ROUNDS = Vårv

designer-short = från

terms-UK = norr
terms-US = sör
terms-between = handens
terms-word = mål

from-corner = { from-word } → { $work }
from-word = Ur hörnan | från hörnan | ∅
all-sides-word = alla sidor
round-word = varv
st-word = mäski | mäskor
few-word = mäsk | mäskor
sts-word = mäsk | mäski
also-run-1 = { $count } { $stitch }
size-in-brackets = [{ $sts } { per-side-word }]
per-side-word = på sidan
size-counts-bare-of = { $counts } [{ $multiple }]
size-side-count = { side-word } { $way } → { $sts }
size-both-STITCHES = { side-word } → { $first } ¦ { way-WITH_CHAINS } → { $second }
size-both-WITH_CHAINS = { side-word } { way-WITH_CHAINS } → { $first } ¦ { way-STITCHES } → { $second }
also-with-examples-1 = { $multiple } {"{"}{ $examples }{"}"}
plus = { $plus } { plus-word }
side-word = Sida
each-side = varje sida
way-STITCHES = båra mäskor
way-WITH_CHAINS = med hörnlänkar
size-two-ways = { side-word } { $way } → { $first } ¦ { $other } → { $second }
size-one-way = { side-word } { $way } → { $first }
