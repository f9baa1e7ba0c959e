package edgewright.desk.parts;

import java.awt.FontMetrics;
import java.text.BreakIterator;
import java.util.Locale;

/** Texts of any length where there is only so much room: shortened with a sign, or in lines. */
public final class ShortText {
    private static final String MORE = "\u2026";

    private ShortText() {}

    /**
     * A text of at most so many letters as people count them, the sign for what is left out among them.
     *
     * @param most 1 or more
     */
    public static String of(String text, int most) {
        BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
        letters.setText(text);
        int end = letters.next(most);
        if (end == BreakIterator.DONE || end == text.length()) {
            return text;
        }
        return text.substring(0, letters.previous()).stripTrailing() + MORE;
    }

    /**
     * A text in lines of at most so many pixels, broken between words, and within a word that is wider than a line. What would
     * come after the last of so many lines is left out, with a sign.
     */
    static String inLines(String text, FontMetrics font, int widthPx, int mostLines) {
        BreakIterator places = BreakIterator.getLineInstance(Locale.ROOT);
        places.setText(text);
        StringBuilder lines = new StringBuilder();
        int from = 0;
        for (int line = 1; from < text.length(); line++) {
            int end = end(text, from, font, widthPx, places);
            boolean isLast = line == mostLines && end < text.length();
            lines.append(from == 0 ? "" : "\n").append(text.substring(from, end).stripTrailing());
            if (isLast) {
                return lines.append(MORE).toString();
            }
            from = end;
        }
        return lines.toString();
    }

    /** Where the line ends that begins there: after a word, if one ends in it, else as far as it goes, by a letter at least. */
    private static int end(String text, int from, FontMetrics font, int widthPx, BreakIterator places) {
        int lineBreak = text.indexOf('\n', from);
        int limit = lineBreak < 0 ? text.length() : lineBreak + 1;
        int fits = from;
        int width = 0;
        while (fits < limit && width <= widthPx) {
            int letter = text.codePointAt(fits);
            width += font.charWidth(letter);
            if (width <= widthPx || fits == from) {
                fits += Character.charCount(letter);
            }
        }
        if (fits >= limit) {
            return limit;
        }
        int place = places.isBoundary(fits) ? fits : places.preceding(fits);
        return place > from ? place : fits;
    }
}
