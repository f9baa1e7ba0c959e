package edgewright.assist.letter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Small letters of squares, from the alphabet of the program: capital and small letters, digits, signs, and marks that are set over
 * or under any letter. Rows count from the line that letters stand on: 0 is the first above it, -1 the first below.
 */
final class PixelAlphabet {
    private static final String RESOURCE = "/edgewright/assist/alphabet.txt";
    private static final int HEIGHT = 7;
    private static final int WORD_SPACE = 3;
    private static final int DOTLESS_I = 0x131;
    private static final int DOTLESS_J = 0x237;

    private static final PixelAlphabet OURS = read();

    private final Map<Integer, Glyph> glyphs;

    private PixelAlphabet(Map<Integer, Glyph> glyphs) {
        this.glyphs = glyphs;
    }

    /**
     * A letter.
     *
     * @param top the row of the first line of squares
     * @param rows the squares from the top; {@code #} is one that is filled; all of one length
     */
    private record Glyph(int top, List<String> rows) {
        int width() {
            return rows.get(0).length();
        }

        /** The lowest row that has a square. */
        int lowest() {
            for (int i = rows.size() - 1; i >= 0; i--) {
                if (rows.get(i).contains("#")) {
                    return top - i;
                }
            }
            return top;
        }

        int highest() {
            for (int i = 0; i < rows.size(); i++) {
                if (rows.get(i).contains("#")) {
                    return top - i;
                }
            }
            return top;
        }
    }

    private static PixelAlphabet read() {
        try (InputStream in = PixelAlphabet.class.getResourceAsStream(RESOURCE)) {
            Map<Integer, Glyph> glyphs = new HashMap<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                if (!line.startsWith("# ")) {
                    String[] parts = line.split(" ", -1);
                    int letter = parts[0].startsWith("U+")
                            ? Integer.parseInt(parts[0].substring(2), 16)
                            : parts[0].codePointAt(0);
                    glyphs.put(letter, new Glyph(HEIGHT - 1, List.of(parts[1].split("/", -1))));
                }
            }
            return new PixelAlphabet(glyphs);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static PixelAlphabet ours() {
        return OURS;
    }

    /** The characters of a text that are missing, each once, in the order of the text. */
    List<String> missing(String text) {
        Set<String> missing = new LinkedHashSet<>();
        for (String letter : letters(text)) {
            boolean there = letter.isBlank() || letter.codePoints().allMatch(glyphs::containsKey);
            if (!there) {
                missing.add(Normalizer.normalize(letter, Normalizer.Form.NFC));
            }
        }
        return List.copyOf(missing);
    }

    /** The squares of a line of text, letter by letter with one free column between; the text has no missing character. */
    Squares squares(String text) {
        Squares squares = new Squares();
        int column = 0;
        for (String letter : letters(text)) {
            if (letter.isBlank()) {
                column += WORD_SPACE;
            } else {
                column += put(squares, letter.codePoints().toArray(), column) + 1;
            }
        }
        return squares;
    }

    private int put(Squares squares, int[] letter, int column) {
        Glyph base = glyphs.get(letter.length > 1 ? withoutDot(letter) : letter[0]);
        int before = 0;
        int width = base.width();
        for (int i = 1; i < letter.length; i++) {
            before = Math.max(before, (glyphs.get(letter[i]).width() - base.width() + 1) / 2);
            width = Math.max(width, glyphs.get(letter[i]).width());
        }
        squares.fill(base.rows(), base.top(), column + before);
        int over = base.highest() + 1;
        int under = Math.min(0, base.lowest()) - 1;
        for (int i = 1; i < letter.length; i++) {
            Glyph mark = glyphs.get(letter[i]);
            int at = column + before + Math.floorDiv(base.width() - mark.width(), 2);
            if (isUnder(letter[i])) {
                squares.fill(mark.rows(), under, at);
                under -= mark.rows().size();
            } else {
                over += mark.rows().size();
                squares.fill(mark.rows(), over, at);
            }
        }
        return width;
    }

    /** A mark over i and j takes the place of their dot. */
    private static int withoutDot(int[] letter) {
        boolean allUnder = true;
        for (int i = 1; i < letter.length; i++) {
            allUnder &= isUnder(letter[i]);
        }
        if (allUnder) {
            return letter[0];
        }
        return letter[0] == 'i' ? DOTLESS_I : letter[0] == 'j' ? DOTLESS_J : letter[0];
    }

    private static boolean isUnder(int mark) {
        return mark >= 0x323 && mark <= 0x328;
    }

    /** Each letter with the marks that belong to it. */
    private static List<String> letters(String text) {
        List<String> letters = new ArrayList<>();
        Normalizer.normalize(text, Normalizer.Form.NFD).codePoints().forEach(c -> {
            String one = Character.toString(c);
            if (Character.getType(c) == Character.NON_SPACING_MARK && !letters.isEmpty()) {
                letters.set(letters.size() - 1, letters.get(letters.size() - 1) + one);
            } else {
                letters.add(one);
            }
        });
        return letters;
    }
}
