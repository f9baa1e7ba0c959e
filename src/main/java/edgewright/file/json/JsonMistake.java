package edgewright.file.json;

import com.fasterxml.jackson.core.JsonToken;
import edgewright.file.fault.Problem.Token;
import java.util.regex.Pattern;

/**
 * Where and why a text stops being JSON.
 *
 * @param offset in the text, counted from 0: the first character that cannot stand there
 */
record JsonMistake(int offset, boolean atEnd, Token expected) {
    /** As much of the text as a sentence quotes. */
    private static final int LONGEST_PIECE = 20;

    /** An escape of half a character, which the parser takes in a value but not in a name. */
    private static final Pattern HALF_PAIR =
            Pattern.compile("(?i)\\\\ud[89ab]..(?!\\\\ud[c-f])|(?<!\\\\ud[89ab]..)\\\\ud[c-f]");

    /**
     * The mistake that comes next in a text whose beginning is right.
     *
     * @param good where the last good token ends. The parser looks ahead, so a good name or text may come after it
     * @param last that token; null at the start of the text
     * @param inObject whether the innermost thing that is open after that token is an object
     */
    static JsonMistake after(String source, int good, JsonToken last, boolean inObject) {
        Token expected = expectedAfter(last, inObject);
        int next = skipBlanks(source, good);
        while (next < source.length()) {
            char separator = separatorFor(expected);
            boolean wanted = source.charAt(next) == (separator == 0 ? '"' : separator);
            if (!wanted) {
                return new JsonMistake(next, false, expected);
            }
            if (separator == 0) {
                int end = endOfSoundText(source, next + 1);
                if (end >= source.length() || source.charAt(end) != '"') {
                    Token part = end >= source.length() ? Token.TEXT_END : Token.TEXT_PART;
                    return new JsonMistake(end, end >= source.length(), part);
                }
                boolean isName = expected == Token.NAME || expected == Token.NAME_OR_END;
                if (isName && HALF_PAIR.matcher(source.substring(next, end)).find()) {
                    return new JsonMistake(next, false, Token.WHOLE_NAME);
                }
                next = end;
                expected = isName ? Token.COLON : expectedAfter(JsonToken.VALUE_STRING, inObject);
            } else {
                expected = inObject && separator == ',' ? Token.NAME : Token.VALUE;
            }
            next = skipBlanks(source, next + 1);
        }
        return new JsonMistake(source.length(), true, expected);
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
            return Token.VALUE;
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

    private static int skipBlanks(String source, int from) {
        int i = from;
        while (i < source.length() && JsonWalk.isBlank(source.charAt(i))) {
            i++;
        }
        return i;
    }

    /** Where a text ends that has its opening quote just before: at its closing quote or the first character it cannot have. */
    private static int endOfSoundText(String source, int from) {
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
