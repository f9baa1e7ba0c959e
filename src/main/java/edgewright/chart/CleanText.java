package edgewright.chart;

/**
 * Cleans what people call things, once, where it enters a chart. What is set in a line must be the same text after it was
 * written, broken at its blanks, printed and read back; so a name has one blank between its words and nothing that cannot be
 * seen. Letters, signs and accents of any script stay as they are.
 */
public final class CleanText {
    private static final int NEXT_LINE = 0x85;
    private static final int REPLACEMENT = 0xfffd;

    private CleanText() {}

    /**
     * A name in one line: each run of blanks and line ends of any kind is one blank, none stand at its ends, and controls,
     * marks that turn the writing direction and invisible characters are left out. Half a surrogate pair, which no file of
     * text can hold, becomes the sign for a character that is not known.
     */
    public static String oneLine(String text) {
        StringBuilder line = new StringBuilder();
        boolean blank = false;
        for (int c : text.codePoints().toArray()) {
            if (isBlank(c)) {
                blank = true;
            } else if (!steers(c) && !isInvisible(c)) {
                line.append(blank && line.length() > 0 ? " " : "").appendCodePoint(isHalf(c) ? REPLACEMENT : c);
                blank = false;
            }
        }
        return line.toString();
    }

    /** Text of several lines, each ended by a line feed; within a line only what {@link #oneLine} leaves out is left out. */
    public static String lines(String text) {
        StringBuilder lines = new StringBuilder();
        for (int c : text.replaceAll("\r\n|[\r\u0085\u2028\u2029]", "\n")
                .codePoints()
                .toArray()) {
            if (c == '\n' || c == '\t') {
                lines.append(c == '\n' ? '\n' : ' ');
            } else if (!steers(c) && !isInvisible(c)) {
                lines.appendCodePoint(isHalf(c) ? REPLACEMENT : c);
            }
        }
        return lines.toString();
    }

    /**
     * Whether a terminal, a label or a reader of print may be steered by this character instead of showing it: a control
     * (C0, delete, C1) or a mark of writing direction (Unicode Standard Annex 9, https://www.unicode.org/reports/tr9).
     */
    public static boolean steers(int c) {
        return Character.getType(c) == Character.CONTROL
                || c == 0x061c
                || c == 0x200e
                || c == 0x200f
                || (c >= 0x202a && c <= 0x202e)
                || (c >= 0x2066 && c <= 0x2069);
    }

    private static boolean isBlank(int c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == NEXT_LINE;
    }

    /** What takes no room. Joiners stay: scripts and emoji are written with them. */
    private static boolean isInvisible(int c) {
        return c == 0xad
                || c == 0x180e
                || c == 0x200b
                || (c >= 0x2060 && c <= 0x206f)
                || c == 0xfeff
                || (c >= 0xfff9 && c <= 0xfffb);
    }

    private static boolean isHalf(int c) {
        return Character.getType(c) == Character.SURROGATE;
    }
}
