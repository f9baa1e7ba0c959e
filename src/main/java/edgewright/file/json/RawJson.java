package edgewright.file.json;

/** Keeps the text of members that this version does not know: digit for digit, only blanks may change. */
public final class RawJson {

    private RawJson() {}

    /** The text with its lines as they are, but for how they end: a line feed, as everywhere in a written chart. */
    public static String inLines(String raw) {
        // A carriage return cannot stand inside a JSON text, so this touches nothing but blanks.
        return raw.replace("\r\n", "\n").replace('\r', '\n');
    }

    /** The text in one line, for a member of an object that is written in one line: each break becomes one space. */
    public static String inOneLine(String raw) {
        return raw.replaceAll("[ \t]*[\r\n][ \t\r\n]*", " ");
    }
}
