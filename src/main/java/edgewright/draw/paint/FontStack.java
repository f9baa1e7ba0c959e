package edgewright.draw.paint;

import edgewright.draw.paint.Shape.Weight;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Which face prints which character, the same in SVG, in pixels and on paper: each character stands in the first face that has
 * it. Greek and accents that stand alone are left to the second face, though the first has some of them, so that a word
 * does not change its face within.
 *
 * <p>What no face has is printed as its number in Unicode between brackets with a quill, {@code ⁅U+4E2D⁆}. These brackets
 * themselves count as characters that no face has, so two texts that differ in what is seen never come out the same.
 */
public final class FontStack {
    private static final int OPENS = 0x2045;
    private static final int CLOSES = 0x2046;

    private static final int FIRST_ACCENT = 0x300;
    private static final int LAST_GREEK = 0x3ff;

    private static final Map<Typeface, FontFile> REGULAR = read(Weight.REGULAR);
    private static final Map<Typeface, FontFile> BOLD = read(Weight.BOLD);

    /** The face of each character, for characters that are printed as themselves and for the brackets. */
    private static final Map<Integer, Typeface> FACES = faces();

    private FontStack() {}

    /** A piece of text as it is printed, in one face. */
    public record Run(Typeface typeface, String text) {
        /** How wide it is, in parts of its size. */
        public double width(Weight weight) {
            Map<Integer, Double> advances =
                    (weight == Weight.BOLD ? BOLD : REGULAR).get(typeface).advances();
            return text.codePoints().mapToDouble(advances::get).sum();
        }
    }

    /** The face that prints a character; empty if none does. Both weights have the same characters. */
    public static Optional<Typeface> faceOf(int character) {
        return character == OPENS || character == CLOSES ? Optional.empty() : Optional.ofNullable(FACES.get(character));
    }

    /**
     * A text as it is printed: blanks of any kind as plain blanks, what is never seen left out, and what no face has as a
     * number in brackets.
     */
    public static String printable(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> out.append(printable(c)));
        return out.toString();
    }

    /** A text as it is printed, in pieces of one face each. */
    public static List<Run> runs(String text) {
        String printable = printable(text);
        List<Run> runs = new ArrayList<>();
        int start = 0;
        while (start < printable.length()) {
            Typeface face = FACES.get(printable.codePointAt(start));
            int end = start;
            while (end < printable.length() && FACES.get(printable.codePointAt(end)) == face) {
                end = printable.offsetByCodePoints(end, 1);
            }
            runs.add(new Run(face, printable.substring(start, end)));
            start = end;
        }
        return runs;
    }

    /** How wide a text is as it is printed, in parts of its size: the sum of the widths of its characters. */
    public static double width(String text, Weight weight) {
        return runs(text).stream().mapToDouble(run -> run.width(weight)).sum();
    }

    /** The characters of a text that no face has, each once, in the order of Unicode. */
    public static NavigableSet<Integer> lacking(String text) {
        NavigableSet<Integer> lacking = new TreeSet<>();
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .filter(c -> !isBlank(c) && !isUnseen(c) && faceOf(c).isEmpty())
                .forEach(lacking::add);
        return lacking;
    }

    private static String printable(int c) {
        if (isBlank(c)) {
            return " ";
        }
        if (isUnseen(c)) {
            return "";
        }
        return faceOf(c).isPresent() ? Character.toString(c) : number(c);
    }

    private static String number(int c) {
        return Character.toString(OPENS) + String.format(Locale.ROOT, "U+%04X", c) + Character.toString(CLOSES);
    }

    private static boolean isPlain(String text) {
        return text.chars().allMatch(c -> c >= ' ' && c <= '~');
    }

    private static boolean isBlank(int c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    private static boolean isUnseen(int c) {
        return Character.isISOControl(c) || Character.getType(c) == Character.FORMAT;
    }

    private static Map<Integer, Typeface> faces() {
        Map<Integer, Typeface> faces = new HashMap<>();
        for (Typeface face : Typeface.values()) {
            for (int c : REGULAR.get(face).advances().keySet()) {
                boolean left = face == Typeface.HYPERLEGIBLE && c >= FIRST_ACCENT && c <= LAST_GREEK;
                if (!left) {
                    faces.putIfAbsent(c, face);
                }
            }
        }
        return faces;
    }

    private static Map<Typeface, FontFile> read(Weight weight) {
        Map<Typeface, FontFile> files = new EnumMap<>(Typeface.class);
        for (Typeface face : Typeface.values()) {
            files.put(face, FontFile.read(face.open(weight)));
        }
        return files;
    }
}
