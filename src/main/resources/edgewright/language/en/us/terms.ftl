# The words of the trade in US terms.
# short- is what stands in the rounds; read- lists all spellings that are understood, parted by bars.

# As in BCP 47.
tag = en-US
terms = US terms

short-BACK_LOOP = sc blo
read-BACK_LOOP = sc blo | scblo | blo sc | sc in blo
meaning-BACK_LOOP = single crochet into the back loop only of the stitch below; its front loop stays free
together-BACK_LOOP = sc2tog blo
togetherRead-BACK_LOOP = sc2tog blo | sc2togblo | blo sc2tog
togetherMeaning-BACK_LOOP = sc blo over the next two stitches: draw up a loop through the back loop of each, then yarn over and draw through all loops on the hook
short-PLAIN = sc
read-PLAIN = sc
meaning-PLAIN = single crochet through both loops of the stitch below
together-PLAIN = sc2tog
togetherRead-PLAIN = sc2tog
togetherMeaning-PLAIN = sc over the next two stitches: draw up a loop through each, then yarn over and draw through all loops on the hook
short-LONG = drop dc
read-LONG = drop dc | dropdc
meaning-LONG = long stitch, a double crochet dropped into the front loop of the stitch two rounds below, in front of the stitch between, which is skipped and covered; draw its first loop up to the height of the round
short-CHAIN = ch
read-CHAIN = ch | chs | chain | chains
meaning-CHAIN = chain
short-TALL = dc
read-TALL = dc
meaning-TALL = double crochet through both loops of the stitch below
short-SLIP = sl st
read-SLIP = sl st | ss | slst | slip st | slip stitch
meaning-SLIP = slip stitch
short-MISS = skip
read-MISS = skip
meaning-MISS = leave the stitch below unworked

tension = gauge
baseStitch = single crochet
