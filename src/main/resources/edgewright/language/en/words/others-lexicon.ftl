# The words of pattern texts that other people write, in UK and US English alike. Bars part the spellings of one thing; the
# longest that fits is taken. Each key is a case of edgewright.words.others.Concept. What the dialects name differently stands in
# uk/others.ftl and us/others.ftl.

ROUND = round | rounds | rnd | rnds | rd | rds | r | rs | rnd. | rnds. | rd.
BASE_ROUND = base round | foundation round | set-up round | setup round | set up round | base rnd | foundation rnd | set-up rnd | base edging | base row | edging round | base
NEXT_ROUND = next round | next rnd | following round | next rd
REPEAT = repeat | rep | repeating | rep. | repeats
FROM = from
BETWEEN = between
TIMES = times | x
ONCE = once
TWICE = twice
THRICE = thrice
MORE = more | further | additional
AGAIN = again | over again
AFTER = after | by the end of | at the end of
CORNER = corner | corners | cnr | cnrs | crnr | turn corner | turn the corner
TO = to | until | up to | through to | till | to within | as far as | thru | stopping | ending | leaving
BEFORE = before
LAST = last | final
REMAIN = remain | remains | remaining | are left | left over | is left | are remaining
EACH = each | either |  every | all | ea | each of | each of the | all of | every one of
IN = in | thro | thru | into | on | at | over | inside | for | through | onto
OF = of
NEXT = next | following
FIRST = first | second
ANY = any
SAME = same
STITCH = st | sts | stitch | stitches
AROUND = around | all round the piece | all around | all the way around | all round | to end of round | to the end of the round | to end of rnd | to end | to the end | round the piece | to beginning | to the beginning | to beg | the whole way round | right round | right around | all the way round | to end of rd | to start
ACROSS = across | along | to end of side | to the end of the side | along the side | across the side | along side | across side | along each side | to end of edge | along edge | along the edge | the length of the side
TOP = top
BOTTOM = bottom | lower edge | lower side
LEFT = left | left-hand | left hand
RIGHT = right | right-hand | right hand
LONG_EDGE = long side | long sides | long edge | long edges | longer sides | longer edges
SHORT_EDGE = short side | short sides | short edge | short edges | shorter sides | shorter edges
SIDE = side | sides | edge | edges
EACH_SIDE = each side | every side | all sides | all four sides | all 4 sides | four sides | 4 sides | per side | a side | each edge | all four edges | all edges | every edge | per edge | one side | all four | both sides
ALIKE = alike | twins |  identical | identically | the same way | the same
THREE_MORE_SIDES = next three sides | next 3 sides | other three sides | other 3 sides | remaining three sides | remaining 3 sides | three remaining sides | 3 remaining sides | rem 3 sides | remaining sides | other sides
SPACE = sp | space | sps | spaces | loop sp
MISS = miss | skip | sk | missing | skipping | missed | skipped | leave out | left unworked | leave unworked
BACK_ONLY = b.l. | b.l | blo | back loop only | back loops only | back loop | back loops | bl only | bl | in blo | b.l.o. | b.l.o | blps
FRONT_ONLY = flo | front loop only | front loops only | front loop | front loops | fl only | fl | f.l.o. | f.l.o | free front loop | free loop of the round before last | free loop of round before last | front loop left free | free loop | front loop of the round before last | front loop (flo)
BOTH_LOOPS = both loops | under both loops | both loops of st
BELOW = below | lower |  down | beneath | under | lower down
ROW = row | rows
YARN = yarn | yarns | colour | color | colours | colors | col | cols | shade | shades | col. | clr
WITH = with | using
CHANGE = change to | changing to | switch to | change colour to | change color to | change yarn to | pick up | attach | join in | now use | join | rejoin | drop | use | take up | now with | work with
ALTERNATE = alternating | alternately | alternate | in turn
ODD = odd | odd ones |  odd-numbered | odd numbered
EVEN = even | even ones |  even-numbered | even numbered
AS = as for | as given for | work as for | work as | as in | same as | as | like | same as for | as per
WITH_CORNERS = including | incl | counting | includes | include | counted with
WITHOUT_CORNERS = dont count | never count | excluding | excl | excl. | not counting | without | excludes | exclude | do not include | not including | are not counted | not counted | don't count | do not count | never counted | are not included | not included | are never counted | don't include | does not include | is not counted | does not count | not incl | aren't counted | never | left out | are left out | is not | are not | not | no | leaving out | not to be counted | don't count | aren't included
COUNTED = counted | included | are included | is included | incl. | belong to the sides |  are counted | is counted | count as | reckoned | are reckoned | is reckoned | numbered | are numbered | belong | belong to | are part of | is part of | count with | counts with | counts for | count for | counting with | part of
TOTAL = total | in total | altogether | in all | all told
STITCH_COUNT = st count | numbers | the numbers | st numbers | stitch numbers | numbers below | st numbers below | stitch counts |  stitch count | sts count | counts | count
MULTIPLE = divide by | divides by | divisible by | be divided by | multiple of | multiples of | a multiple of | mult of | mult. of | multiple | multiples
PLUS = plus | +
AND = and | & | then
OR = or
ONE_CHAIN_EACH_END = one corner chain at each end | 1 corner chain at each end | one corner ch at each end
STANDING = standing
ORDINARY = ordinary | normal | regular
BORDER_OVER = darn in | sew in | run in | work in ends | work in the ends | hide the ends | finish off | fasten off | fasten off yarn | cut yarn | cut the yarn | break yarn | break off | weave in ends | weave in all ends | fo | f.o. | end off | do not turn | don't turn | without turning | do not join | turn | invisible join | close with an invisible join | join invisibly | needle join | block | break off yarn | ends off
DEFINED_AS = means | stands for
NOT_OURS = swap | swapped | exchange | except | instead | omit | omitting | reverse | reversed | mirror | mirrored | backwards | opposite | unless | otherwise | but | increase | inc | decrease | dec | tog | together
UNLESS = unless otherwise stated | unless stated otherwise | unless otherwise noted | unless noted otherwise | unless otherwise told | unless told otherwise | unless marked | unless otherwise specified | unless specified otherwise | unless the pattern says otherwise | unless told | unless stated | unless noted
BEHIND = behind | it covers | that it covers | which it covers | it hides | hides behind it | that hides behind it | lies behind it | which lies behind it |  covered | right behind | behind it | right behind it | in front of which it lies | behind each | covered by it
GIVES = there should now be | there should be | there will be | you will have | you will now have | you have now | that makes | that gives | this makes | this gives | you should have | you should now have | you now have | now there are | there are now | there are | each side now has | side now has | now has | you have | makes | gives | making | giving | then have | should have
ANY_NUMBER = any number | something
NONE = none | nothing
STAR = star | the star | asterisk | the asterisk
# Words that stand between others and say nothing to the hook
NOISE = its | their | the | work | working | worked | make | now | a | an | only | crochet | please | leaving the front loop free | leaving front loop free | leaving the front loop unworked | its front loop stays free | front loop stays free | leaving front loop unworked | leaving front loops free
# Parted by bars as well: numbers in words, from one on
# 10s, 10 s, elevens: so many each time, from two on
NUMBERS_EACH = twos | threes | fours | fives | sixes | sevens | eights | nines | tens | elevens | twelves | thirteens | fourteens | fifteens | sixteens
# Twenty, thirty and so on, before the numbers from one to nine: forty-one
TENS = twenty | thirty | forty | fifty | sixty | seventy | eighty | ninety
NUMBERS = one | two | three | four | five | six | seven | eight | nine | ten | eleven | twelve | thirteen | fourteen | fifteen | sixteen | seventeen | eighteen | nineteen | twenty

# Words for the two terms, each followed or led by a word for terms
UK_NAMES = united kingdom | english | great britain | britain |  uk | u.k. | british | gb | uk/australian | british english
US_NAMES = united states | us | u.s. | usa | american | us english
# Words for terms that may stand further off in the same sentence
TERM_WORDS_NEAR = terms | term | terminology
TERM_WORDS = terms | term | terminology | abbreviations | stitch names | crochet terms | crochet terminology | crochet abbreviations | names | notation | crochet notation | conventions | english terms | standard terms | language | pattern | stitches
TERM_LEADS = terms: | terminology: | abbreviations, | terms are | terms : | terms - | terms used: | written in | terms are | language: | terms =
# Stitches that occur in the one terms only: https://craftydogblog.blogspot.com/2011/01/us-vs-uk-terminology.html
US_ONLY = sc | single crochet | scblo | bloscs | blosc

# Headings of the parts of a pattern
PART_MATERIALS = materials | you need | you will need | what you need | what you will need | yarn | yarns | supplies | hook | hooks | equipment | materials needed | requirements | colours | colors | yarn & hook | yarn and hook | yarns and hook | materials and tools | tools | you'll need | things you need | what you'll need
PART_TENSION = tension | gauge | tension/gauge | tension and size | gauge and size
PART_SIZE = size | sizes | finished size | finished sizes | measurements | finished measurements
PART_ABBREVIATIONS = abbreviations | abbreviations used | abbreviations and stitches | stitches | stitches used | key | stitch key | special stitch | special stitches | stitch guide | glossary | terms and abbreviations | abbreviations (uk terms) | abbreviations (us terms) | abbreviations (uk) | abbreviations (us) | stitches and abbreviations | special abbreviations | abbrevs | abbr | abbr.
PART_SET_UP = set-up | setup | set up | notes | pattern notes | before you begin | before you start | how to read this pattern | how it works | base round | foundation | preparation | notes on the pattern | general notes | base | corners | stitch counts | read this first | how to read the pattern | how to read it | how this is written | reading the pattern | working notes | note | general
PART_ROUNDS = rounds | border | the border | instructions | pattern | the pattern | directions | method | the rounds | edging | to make | working the border | pattern instructions | work the border
# What is tried beside the border
PART_PRACTICE = homework | practice | practise | exercise | swatch | test swatch | practice swatch | to practise
PART_FINISHING = finishing | finish | to finish | making up | finishing off | blocking | ends | to finish off
PART_OTHER = about | introduction | care | copyright | credits | designer's note | designer's notes | about this border | about the border | about this pattern | difficulty | skill level | level

# Words that are no concept of their own, by what they tell beside others
ORDINALS = first | second | third | fourth | fifth | sixth | seventh | eighth | ninth | tenth | eleventh | twelfth | thirteenth | fourteenth | fifteenth | sixteenth | seventeenth | eighteenth | nineteenth | twentieth
ORDINAL_ENDINGS = st | nd | rd | th
# Shortened words end in a point without ending a sentence: those without a vowel, and these
VOWELS = aeiou
SHORTENED_WITH_VOWELS = in | rep | rem | beg | alt
PLURAL_ENDING = s
# One letter that stands for a number of repeats: 8n, 8s
MULTIPLE_MARKS = n | s
MULTIPLE_OVER = over | extra
MEASURE_WORDS = mm | cm | g | gram | grams | m | inch | inches | %
EXAMPLE_WORDS = model | base | yours | your | practice | sample | example | here | begin | began | ours | mine | my | had | show | reckoned | figures | numbers | for
GROWTH_WORDS = grow | grows | gain | gains | longer
GROWN_WORDS = grown | gained
SINCE_WORDS = since
EXCEPT_WORDS = without | but
# What opens a sentence to people; what tells that it is about a mistake; what a sentence about rounds goes on with
IF_WORDS = if
MISTAKE_WORDS = check | lopsided | crooked | too | get | got | wrong | mistake | miscounted | spare | extra
THAT_WORDS = that | this | it | they | these | those
# A sentence that names a round among others goes on as it began
SO_ON_WORDS = so | etc | way
MEANS_WORDS = means | is | are | stands
THOSE_WORDS = they | these | those | them | both | two
BELONG_WORDS = belong | belongs | begins | ends | part
NOT_COUNTED_WORDS = dont count | do not count | never count |  are not counted | not counted | do not count | does not count | is not counted | are never counted | never counted | don't count | aren't counted | are not included | not included | aren't included
# What a count takes in beside what it leaves out
TAKE_IN_WORDS = take | takes | cover | covers
BRACKET_WORDS = brackets | bracket | parentheses
LEAVE_WORDS = leave | leaves
PEOPLE_WORDS = you | your | we | i | my | me | us | our
LOOK_WORDS = look | notice | admire
ROUND_VERBS = has | have | will | needs | need | goes | go | makes | make | is | are | was | were | looks | look | shows | show | begins | begin | tells | tell | brings | bring | keeps | keep | gives | give | sits | sit | adds | ends | finishes | hides | covers | draws | frames | forms | lies | lie | lets | helps | stops | holds
# Words that change the work without a count: which way it goes; what begins an order, and what may stand before that; what is worked
# beside the rounds that are told; what is done otherwise; which of many. Care with the hand is none of these.
DIRECTION_WORDS = wrong side | ws | left to right | right to left | other way | other way round | other end | other direction | upside down | clockwise | anticlockwise
TURN_WORDS = turn | turning | over | work | round | piece | at | after
ORDER_VERBS = work | worked | do | make | repeat | begin | start | finish | end | add | close | crochet | leave | stop
PUT_WORDS = put | place
ORDER_LEADS = now | then | and | last | next | finally | a | an | the | one | all | of | here | please | to | lastly
EXTRA_WORDS = plain | another | extra | more | further
OTHERWISE_WORDS = except | instead | reverse | reversed | mirror | mirrored | backwards | opposite | swap | swapped | exchange
EVERY_ORDINALS = other | second | third | fourth | fifth | sixth | seventh | eighth | ninth | tenth | 2nd | 3rd | 4th | 5th | 6th | 7th | 8th
CARE_WORDS = loosely | loose | loosen | tight | tightly | tighter | gently | pull | pucker | puckers | ruffle | ruffles | ruffled | taut | slack | lean | neat | neatly | relaxed | tension | firmly | firm | upright | flat
# How a round is joined; what explains a sign of repeat; where rows of the piece end; what tells how many rounds there are in all
JOIN_WORDS = join | rejoin | attach | joining
SIGN_WORDS = brackets | bracket | parentheses | marks | mark | means | mean | indicate | indicates | instructions | between | inside | enclosed | shown | show | shows
ROW_END_WORDS = ends | end
DEPTH_WORDS = deep | wide | high | long | tall | altogether | in all | has | is
PAGE_WORDS = page | sheet | side
PAGE_OF = of
# What is left to whoever works: the whole sentence is no order. What is put on stitches and is no stitch
WISH_WORDS = if you like | if you wish | if you want | if you prefer | if wanted | if liked | if wished | if desired | optional | optionally
MARKER_WORDS = marker | markers | pin | pins
QUESTION_SIGN = ?
NOT_WORDS = not
US_IN_CAPITALS = us
# Who made it, before the name
BY_DESIGNER = by | design by | designed by | a design by | a pattern by | pattern by

COLOUR_NAMES = dark | light | green | white | grey | gray | cream | red | blue | black | brown | yellow | pink | orange | purple | beige | navy | gold | silver | teal | rust | sand | stone | slate | chalk | lilac | mustard
# Yarns: words before an id, between an id and its name, before a list of names, and words that are no name
YARN_LEADS = yarn | colour | color | col | shade
# What a yarn is for, before its letter in brackets: 'Main shade (M): Reedmace'
YARN_ROLES = main | contrast | contrasting | background | ground
YARN_IS = is | is the
YARN_CALLED = called
YARN_LISTS = yarn | yarns | colour | colours | color | colors | wool | shade | shades
YARN_LISTS_FOR = for this border
YARN_AND = and
NOT_YARN_NAMES = all | then | as | at | on | by | again | only | each | every | round | rounds | rnd | rnds | and | is | are | or | the | in | with | for | to | of
ABOUT_YARN = yarn | colour | color | wool | skein | terms | shade
ABOUT_YARN_ALONE = uk
