package edgewright.file.fault;

/**
 * Text of a user as it can stand in one line on any screen: what would break the line, turn the writing direction or steer a
 * terminal becomes a replacement character.
 */
final class PrintableText {
    private static final int REPLACEMENT = '\ufffd';

    private PrintableText() {}

    /** All of the text. */
    static String of(String text) {
        return shortened(text, Integer.MAX_VALUE);
    }

    /** The beginning of the text, with a sign that it goes on where there is more than so many characters. */
    static String shortened(String text, int longest) {
        StringBuilder line = new StringBuilder();
        int[] characters = text.codePoints().toArray();
        for (int i = 0; i < characters.length && i < longest; i++) {
            line.appendCodePoint(isPrintable(characters[i]) ? characters[i] : REPLACEMENT);
        }
        return characters.length > longest ? line.append('…').toString() : line.toString();
    }

    private static boolean isPrintable(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
