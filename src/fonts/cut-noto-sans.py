"""Cuts the second face of the program out of Noto Sans: the letters that Atkinson Hyperlegible Next lacks.

    python3 src/fonts/cut-noto-sans.py NotoSans_400Regular.ttf fonts/NotoSans-Cut-Regular.ttf
    python3 src/fonts/cut-noto-sans.py NotoSans_700Bold.ttf fonts/NotoSans-Cut-Bold.ttf

Run it from the top of the repository. It needs fontTools. Where the original comes from stands in DEVELOPERS.md. The same original gives the same file, byte for byte.
"""

import sys

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont
from fontTools.ttLib.scaleUpem import scale_upem

# Blocks of Unicode, both ends included.
KEPT = [
    (0x00A0, 0x02FF),  # Latin, with letters of African languages and the signs between letters
    (0x0300, 0x036F),  # accents that stand alone
    (0x0370, 0x03FF),  # Greek
    (0x0400, 0x052F),  # Cyrillic
    (0x1E00, 0x1FFF),  # Latin and Greek with more accents
    (0x2010, 0x2027),  # dashes and quotation marks
    (0x2030, 0x205E),  # more punctuation, with the brackets around the number of a character that nothing prints
    (0x2070, 0x209F),  # raised and lowered figures
    (0x20A0, 0x20C0),  # currencies
    (0x2100, 0x218B),  # numero, trade mark, fractions
    (0x2C60, 0x2C7F),  # more Latin
    (0xFB00, 0xFB06),  # joined letters
]

# The first face prints these itself; all else that it has, it prints better than a cut would.
FIRST_FACE = "fonts/AtkinsonHyperlegibleNext-Regular.ttf"
KEPT_BESIDE_THE_FIRST = [(0x0300, 0x036F), (0x0370, 0x03FF)]

# Capitals of Noto Sans are 714 high and those of the first face 668, each in a thousand. Drawn smaller they are equally high.
# The em stays a thousand, so that each letter is a whole number of thousandths wide, as a printed file says it.
SCALE = 936
EM = 1000


def within(c, blocks):
    return any(first <= c <= last for first, last in blocks)


def main(original, cut):
    first = set(TTFont(FIRST_FACE).getBestCmap())
    font = TTFont(original, recalcTimestamp=False)
    kept = [
        c
        for c in font.getBestCmap()
        if within(c, KEPT) and (c not in first or within(c, KEPT_BESIDE_THE_FIRST))
    ]
    options = Options()
    options.layout_features = []
    options.hinting = False
    options.name_IDs = [0, 1, 2, 3, 4, 5, 6, 7, 13, 14]
    options.drop_tables += ["GDEF", "GPOS", "GSUB", "STAT", "gasp", "prep"]
    subsetter = Subsetter(options)
    subsetter.populate(unicodes=kept)
    subsetter.subset(font)
    scale_upem(font, SCALE)
    font["head"].unitsPerEm = EM
    font.save(cut)


if __name__ == "__main__":
    main(*sys.argv[1:])
