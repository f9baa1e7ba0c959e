# What writers in US terms call the stitches, beside what the program itself writes. Bars part the spellings.

SHORT = s.c. | s.c | sc | single crochet | single crochets | scs
TALL = tall stitch | tall stitches | tall st | tall sts | d.c. | d.c | dc | double crochet | double crochets | dcs
CHAIN = ch | chs | chain | chains
SLIP = sl st | ss | slst | slip st | slip stitch | sl sts | sl
BACK_LOOP_STITCH = scblo | blosc | scbl | blsc | sc-blo | blo-sc
LONG_STITCH = long double crochets | drop dcs | dropped double crochets | long stitch | drop stitch | long stitches | drop dc | dropdc | dropped dc | drop double crochet | dropped double crochet | long dc | long double crochet | overlay dc | overlay double crochet | mosaic dc | mosaic double crochet | mdc | m-dc | ddc | drop-down dc | drop-down double crochet | dip-down dc | dip-down double crochet | dcflo | flodc
OTHER_STITCH = hdc | half double crochet | tr | treble | treble crochet | dtr | double treble | htr | half treble | bobble | puff | cluster | picot | shell | popcorn | bpsc | fpsc | fpdc | bpdc
