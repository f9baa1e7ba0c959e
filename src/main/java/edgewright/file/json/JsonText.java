package edgewright.file.json;

import java.util.Locale;

/** Pieces of JSON text as they are written. */
public final class JsonText {
    private JsonText() {}

    /** A member of an object. */
    public static String member(String name, String json) {
        return quoted(name) + ": " + json;
    }

    /**
     * The text in quotes. Besides what JSON asks for, characters are escaped that would be lost in UTF-8 (half a surrogate
     * pair) or be taken for the end of a line.
     */
    public static String quoted(String plain) {
        StringBuilder json = new StringBuilder("\"");
        plain.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> json.append("\\\"");
                case '\\' -> json.append("\\\\");
                case '\n' -> json.append("\\n");
                case '\r' -> json.append("\\r");
                case '\t' -> json.append("\\t");
                default -> {
                    if (isEscaped(c)) {
                        json.append(String.format(Locale.ROOT, "\\u%04x", c));
                    } else {
                        json.appendCodePoint(c);
                    }
                }
            }
        });
        return json.append('"').toString();
    }

    private static boolean isEscaped(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            default -> c == '\ufeff';
        };
    }
}
