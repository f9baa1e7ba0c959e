package edgewright.file;

import com.fasterxml.jackson.core.JsonToken;
import edgewright.file.Problem.Token;

/**
 * Where and why a text stops being JSON.
 *
 * @param offset in the text, counted from 0: the first character that cannot stand there
 */
record JsonMistake(int offset, boolean atEnd, Token expected) {
    /** As much of the text as a sentence quotes. */
    private static final int LONGEST_PIECE = 20;

    /**
     * The mistake that comes next in a text whose beginning is right.
     *
     * @param good where the last good token ends
     * @param last that token; null at the start of the text
     * @param inObject whether the innermost thing that is open after that token is an object
     */
    static JsonMistake after(String source, int good, JsonToken last, boolean inObject) {
        int next = skipBlanks(source, good);
        Token expected = expectedAfter(last, inObject);
        char separator = separatorFor(expected);
        if (separator != 0 && next < source.length() && source.charAt(next) == separator) {
            next = skipBlanks(source, next + 1);
            expected = inObject && separator == ',' ? Token.NAME : Token.VALUE;
        }
        boolean takesText = separatorIsDone(expected) && next < source.length() && source.charAt(next) == '"';
        if (takesText) {
            next = badTextPart(source, next + 1);
            expected = Token.TEXT_PART;
        }
        return new JsonMistake(Math.min(next, source.length()), next >= source.length(), expected);
    }

    /** What stands there. */
    String found(String source) {
        return expected == Token.TEXT_PART ? source.substring(offset, offset + 1) : pieceAt(source, offset);
    }

    /** The word or sign that starts at this place, cut short if it is long. */
    static String pieceAt(String source, int start) {
        int end = start;
        while (end < source.length() && end - start < LONGEST_PIECE && isWordPart(source.codePointAt(end))) {
            end += Character.charCount(source.codePointAt(end));
        }
        return source.substring(start, end == start ? start + Character.charCount(source.codePointAt(start)) : end);
    }

    private static boolean isWordPart(int c) {
        return Character.isLetterOrDigit(c) || c == '_' || c == '.' || c == '+' || c == '-' || c == '#';
    }

    private static Token expectedAfter(JsonToken last, boolean inObject) {
        if (last == null) {
            return Token.OBJECT_START;
        }
        return switch (last) {
            case START_OBJECT -> Token.NAME_OR_END;
            case START_ARRAY -> Token.VALUE_OR_END;
            case FIELD_NAME -> Token.COLON;
            default -> inObject ? Token.COMMA_OR_BRACE : Token.COMMA_OR_BRACKET;
        };
    }

    private static char separatorFor(Token expected) {
        return switch (expected) {
            case COLON -> ':';
            case COMMA_OR_BRACE, COMMA_OR_BRACKET -> ',';
            default -> 0;
        };
    }

    private static boolean separatorIsDone(Token expected) {
        return separatorFor(expected) == 0;
    }

    private static int skipBlanks(String source, int from) {
        int i = from;
        while (i < source.length() && JsonWalk.isBlank(source.charAt(i))) {
            i++;
        }
        return i;
    }

    /** The first character that cannot stand in a JSON text, from the one after its opening quote on. */
    private static int badTextPart(String source, int from) {
        int i = from;
        while (i < source.length()) {
            char c = source.charAt(i);
            if (c < ' ' || c == '"') {
                return i;
            }
            if (c == '\\') {
                i++;
                if (i >= source.length() || "\"\\/bfnrtu".indexOf(source.charAt(i)) < 0) {
                    return i;
                }
                for (int digits = source.charAt(i) == 'u' ? 4 : 0; digits > 0; digits--) {
                    i++;
                    if (i >= source.length() || Character.digit(source.charAt(i), 16) < 0) {
                        return i;
                    }
                }
            }
            i++;
        }
        return i;
    }
}
