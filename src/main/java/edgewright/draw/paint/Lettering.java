package edgewright.draw.paint;

import edgewright.draw.paint.Shape.Weight;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;

/**
 * The measures of the bundled face, Atkinson Hyperlegible Next: how wide a text is, read from the same font files that every
 * driver sets it in, so that a picture is laid out alike on every machine.
 *
 * <p>Widths are the plain sums of advance widths. Drivers do not kern.
 */
public final class Lettering {
    /** The family name of the face. */
    public static final String FAMILY = "Atkinson Hyperlegible Next";

    /** How far letters with ascenders rise above the base line, in parts of the size. */
    public static final double ASCENT = 0.75;

    /** How far capital letters with accents rise above the base line, in parts of the size. */
    public static final double ACCENT = 0.95;

    /** How far letters with descenders reach below the base line, in parts of the size. */
    public static final double DESCENT = 0.22;

    /** The height of capital letters and figures, in parts of the size. */
    public static final double CAPITAL = 0.668;

    private static final int CMAP = tag("cmap");
    private static final int HEAD = tag("head");
    private static final int HHEA = tag("hhea");
    private static final int HMTX = tag("hmtx");

    private static final Map<Weight, Lettering> FACES =
            Map.of(Weight.REGULAR, load(Weight.REGULAR), Weight.BOLD, load(Weight.BOLD));

    private final Map<Integer, Double> advances = new HashMap<>();
    private final double missing;

    private Lettering(ByteBuffer font) {
        Map<Integer, Integer> tables = new HashMap<>();
        int count = font.getShort(4);
        for (int i = 0; i < count; i++) {
            tables.put(font.getInt(12 + 16 * i), font.getInt(12 + 16 * i + 8));
        }
        double unitsPerEm = font.getShort(tables.get(HEAD) + 18) & 0xffff;
        int longMetrics = font.getShort(tables.get(HHEA) + 34) & 0xffff;
        int hmtx = tables.get(HMTX);
        Map<Integer, Integer> glyphs = glyphs(font, tables.get(CMAP));
        glyphs.forEach((character, glyph) -> {
            int metric = Math.min(glyph, longMetrics - 1);
            advances.put(character, (font.getShort(hmtx + 4 * metric) & 0xffff) / unitsPerEm);
        });
        missing = (font.getShort(hmtx) & 0xffff) / unitsPerEm;
    }

    /** How wide a text is at that size. A character that the face lacks is as wide as its sign for missing characters. */
    public static double widthMm(String text, Weight weight, double sizeMm) {
        Lettering face = FACES.get(weight);
        return sizeMm
                * text.codePoints()
                        .mapToDouble(c -> face.advances.getOrDefault(c, face.missing))
                        .sum();
    }

    /** Whether the face has every character of a text. */
    public static boolean has(String text) {
        Lettering face = FACES.get(Weight.REGULAR);
        return text.codePoints().allMatch(face.advances::containsKey);
    }

    /** The font file of a weight, as TrueType. The caller closes it. */
    public static InputStream open(Weight weight) {
        String file = switch (weight) {
            case REGULAR -> "/edgewright/fonts/AtkinsonHyperlegibleNext-Regular.ttf";
            case BOLD -> "/edgewright/fonts/AtkinsonHyperlegibleNext-Bold.ttf";
        };
        InputStream stream = Lettering.class.getResourceAsStream(file);
        if (stream == null) {
            throw new IllegalStateException("the program was built without its font " + file);
        }
        return stream;
    }

    private static Lettering load(Weight weight) {
        try (InputStream stream = open(weight)) {
            return new Lettering(ByteBuffer.wrap(stream.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Character to glyph, from the cmap subtable of format 4, which every TrueType face for the basic plane has. */
    private static Map<Integer, Integer> glyphs(ByteBuffer font, int cmap) {
        int subtables = font.getShort(cmap + 2);
        for (int i = 0; i < subtables; i++) {
            int at = cmap + font.getInt(cmap + 4 + 8 * i + 4);
            if (font.getShort(at) == 4) {
                return segments(font, at);
            }
        }
        throw new IllegalStateException("the font has no cmap of format 4");
    }

    private static Map<Integer, Integer> segments(ByteBuffer font, int at) {
        Map<Integer, Integer> glyphs = new HashMap<>();
        int twiceCount = font.getShort(at + 6) & 0xffff;
        int ends = at + 14;
        int starts = ends + twiceCount + 2;
        int deltas = starts + twiceCount;
        int offsets = deltas + twiceCount;
        for (int s = 0; s < twiceCount; s += 2) {
            int last = font.getShort(ends + s) & 0xffff;
            int first = font.getShort(starts + s) & 0xffff;
            int delta = font.getShort(deltas + s);
            int offset = font.getShort(offsets + s) & 0xffff;
            for (int c = first; c <= last && c != 0xffff; c++) {
                int glyph = offset == 0
                        ? c + delta & 0xffff
                        : font.getShort(offsets + s + offset + 2 * (c - first)) & 0xffff;
                if (offset != 0 && glyph != 0) {
                    glyph = glyph + delta & 0xffff;
                }
                if (glyph != 0) {
                    glyphs.put(c, glyph);
                }
            }
        }
        return glyphs;
    }

    private static int tag(String name) {
        return name.charAt(0) << 24 | name.charAt(1) << 16 | name.charAt(2) << 8 | name.charAt(3);
    }
}
