package edgewright.draw.paint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;

/** Which characters a TrueType font file has, and how wide each is, in parts of the size. */
final class FontFile {
    private static final int CMAP = tag("cmap");
    private static final int HEAD = tag("head");
    private static final int HHEA = tag("hhea");
    private static final int HMTX = tag("hmtx");

    private final Map<Integer, Double> advances = new HashMap<>();

    private FontFile(ByteBuffer font) {
        Map<Integer, Integer> tables = new HashMap<>();
        int count = font.getShort(4);
        for (int i = 0; i < count; i++) {
            tables.put(font.getInt(12 + 16 * i), font.getInt(12 + 16 * i + 8));
        }
        double unitsPerEm = font.getShort(tables.get(HEAD) + 18) & 0xffff;
        int longMetrics = font.getShort(tables.get(HHEA) + 34) & 0xffff;
        int hmtx = tables.get(HMTX);
        glyphs(font, tables.get(CMAP)).forEach((character, glyph) -> {
            int metric = Math.min(glyph, longMetrics - 1);
            advances.put(character, (font.getShort(hmtx + 4 * metric) & 0xffff) / unitsPerEm);
        });
    }

    /** Reads a font to its end and closes it. */
    static FontFile read(InputStream font) {
        try (font) {
            return new FontFile(ByteBuffer.wrap(font.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The width of each character that it has; 0 for an accent that stands over the letter before it. */
    Map<Integer, Double> advances() {
        return advances;
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
