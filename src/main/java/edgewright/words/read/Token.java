package edgewright.words.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A word, a number or a sign in a text, and where it stands. Blanks part tokens and are none; so are the change from digits
 * to letters and back.
 *
 * @param text as it stands in the text
 * @param lower the same in small letters
 * @param line from 1
 * @param column from 1
 */
record Token(Kind kind, String text, String lower, int line, int column) {
    enum Kind {
        WORD,
        NUMBER,
        SIGN
    }

    Token(Kind kind, String text, int line, int column) {
        this(kind, text, kind == Kind.WORD ? lower(text) : text, line, column);
    }

    /** The tokens of one line. */
    static List<Token> of(String line, int number) {
        List<Token> tokens = new ArrayList<>();
        int i = 0;
        while (i < line.length()) {
            int start = i;
            int c = line.codePointAt(i);
            i += Character.charCount(c);
            Kind kind = kind(c);
            if (isBlank(c)) {
                continue;
            }
            while (kind != Kind.SIGN && i < line.length() && continues(kind, line.codePointAt(i))) {
                i += Character.charCount(line.codePointAt(i));
            }
            tokens.add(new Token(kind, line.substring(start, i), number, start + 1));
        }
        return tokens;
    }

    /** Whether it is this word or sign, in small or capital letters. */
    boolean is(String word) {
        return lower.equals(word);
    }

    static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    /** Blanks of any kind: tabs and no-break spaces too. */
    static boolean isBlank(int c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    private static boolean continues(Kind kind, int c) {
        return kind(c) == kind || (kind == Kind.WORD && isMark(c));
    }

    private static Kind kind(int c) {
        if (c >= '0' && c <= '9') {
            return Kind.NUMBER;
        }
        return Character.isLetter(c) ? Kind.WORD : Kind.SIGN;
    }

    private static boolean isMark(int c) {
        int type = Character.getType(c);
        return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
    }
}
