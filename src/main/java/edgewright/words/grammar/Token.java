package edgewright.words.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A word, a number or a sign. Blanks part tokens and are none; so are the change from digits to letters and back.
 *
 * @param text as it stands in the text
 * @param lower the same in small letters
 * @param line from 1
 * @param column from 1
 */
public record Token(Kind kind, String text, String lower, int line, int column) {
    public enum Kind {
        WORD,
        NUMBER,
        SIGN
    }

    /** The tokens of one line whose typographic signs are plain already. */
    public static List<Token> of(String line, int number) {
        List<Token> tokens = new ArrayList<>();
        int i = 0;
        while (i < line.length()) {
            int start = i;
            Kind kind = kind(line.charAt(i));
            i++;
            while (i < line.length() && goesOn(kind, line, start, i)) {
                i++;
            }
            if (!Character.isWhitespace(line.charAt(start))) {
                String text = line.substring(start, i);
                tokens.add(new Token(kind, text, text.toLowerCase(Locale.ROOT), number, start + 1));
            }
        }
        return tokens;
    }

    public int end() {
        return column + text.length();
    }

    private static boolean goesOn(Kind kind, String line, int start, int i) {
        char c = line.charAt(i);
        if (kind == Kind.SIGN) {
            return line.charAt(start) == '*' && c == '*' && i == start + 1;
        }
        boolean apostrophe =
                kind == Kind.WORD && c == '\'' && i + 1 < line.length() && Character.isLetter(line.charAt(i + 1));
        return kind(c) == kind || apostrophe;
    }

    private static Kind kind(char c) {
        if (c >= '0' && c <= '9') {
            return Kind.NUMBER;
        }
        boolean inWord =
                Character.isLetter(c) || Character.isSurrogate(c) || Character.getType(c) == Character.NON_SPACING_MARK;
        return inWord ? Kind.WORD : Kind.SIGN;
    }
}
