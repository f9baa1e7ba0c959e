# What writers in UK terms call the stitches, beside what the program itself writes. Bars part the spellings.

SHORT = d.c. | d.c | d. c. | dc | double crochet | double crochets | dcs
TALL = tall stitch | tall stitches | tall st | tall sts | tr | treble | trebles | treble crochet | trs
CHAIN = ch | chs | chain | chains
SLIP = sl st | ss | slst | slip st | slip stitch | sl sts | sl
BACK_LOOP_STITCH = dcblo | blodc | dcbl | bldc | dc-blo | blo-dc
LONG_STITCH = long trebles | drop trebles | drop trs | dropped trebles | long stitch | drop stitch | long stitches | drop tr | droptr | dropped tr | drop treble | dropped treble | long tr | long treble | overlay tr | overlay treble | mosaic tr | mosaic treble | mtr | m-tr | drop-down treble | drop-down tr | dip-down treble | dip-down tr | trflo | flotr | dtr-drop
OTHER_STITCH = htr | half treble | dtr | double treble | ttr | triple treble | sc | single crochet | hdc | half double crochet | bobble | puff | cluster | picot | shell | popcorn | bpdc | fpdc | fptr | bptr
