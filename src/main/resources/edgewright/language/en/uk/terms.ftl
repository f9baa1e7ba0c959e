# The words of the trade in UK terms.
# short- is what stands in the rounds; read- lists all spellings that are understood, parted by bars.

# As in BCP 47.
tag = en-GB
terms = UK terms

short-BACK_LOOP = dc blo
read-BACK_LOOP = dc blo | dcblo | blo dc | dc in blo
meaning-BACK_LOOP = double crochet into the back loop only of the stitch below; its front loop stays free
together-BACK_LOOP = dc2tog blo
togetherRead-BACK_LOOP = dc2tog blo | dc2togblo | blo dc2tog
togetherMeaning-BACK_LOOP = dc blo over the next two stitches: draw up a loop through the back loop of each, then yarn round hook and draw through all loops on the hook
short-PLAIN = dc
read-PLAIN = dc
meaning-PLAIN = double crochet through both loops of the stitch below
together-PLAIN = dc2tog
togetherRead-PLAIN = dc2tog
togetherMeaning-PLAIN = dc over the next two stitches: draw up a loop through each, then yarn round hook and draw through all loops on the hook
short-LONG = drop tr
read-LONG = drop tr | droptr
meaning-LONG = long stitch, a treble dropped into the front loop of the stitch two rounds below, in front of the stitch between, which is missed and covered; draw its first loop up to the height of the round
short-CHAIN = ch
read-CHAIN = ch | chs | chain | chains
meaning-CHAIN = chain
short-TALL = tr
read-TALL = tr
meaning-TALL = treble through both loops of the stitch below
short-SLIP = sl st
read-SLIP = sl st | ss | slst | slip st | slip stitch
meaning-SLIP = slip stitch
short-MISS = miss
read-MISS = miss
meaning-MISS = leave the stitch below unworked

tension = tension
baseStitch = double crochet
