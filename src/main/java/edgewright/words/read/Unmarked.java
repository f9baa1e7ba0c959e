package edgewright.words.read;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of Markdown without its marks, as far as written patterns have them: headings, lists of words in bold, hard line
 * breaks and signs that are escaped.
 *
 * @param text a heading begins at once, everything else after a blank, so that no other line can pass for a heading
 * @param columns where each character of the text stands in the line, from 1, and where it ends
 * @param level of a heading, from 1; 0 for any other line
 */
record Unmarked(String text, List<Integer> columns, int level) {
    private static final Pattern HEADING = Pattern.compile("(#{1,6})\\s+");
    private static final Pattern ITEM = Pattern.compile("- (?=\\*\\*)");
    private static final String PUNCTUATION = "!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~";

    Unmarked {
        columns = List.copyOf(columns);
    }

    static Unmarked of(String raw) {
        Matcher heading = HEADING.matcher(raw);
        boolean isHeading = heading.lookingAt();
        Matcher item = ITEM.matcher(raw);
        boolean isItem = item.lookingAt();
        StringBuilder text = new StringBuilder(isHeading ? "" : " ");
        List<Integer> columns = new ArrayList<>();
        int at = isHeading ? heading.end() : isItem ? item.end() : 0;
        if (!isHeading) {
            columns.add(at + 1);
        }
        while (at < raw.length()) {
            boolean escapes = raw.charAt(at) == '\\';
            if (isItem && raw.startsWith("**", at)) {
                at += 2;
                continue;
            }
            if (escapes && at + 1 == raw.length()) {
                break;
            }
            if (escapes && PUNCTUATION.indexOf(raw.charAt(at + 1)) >= 0) {
                at++;
            }
            text.append(raw.charAt(at));
            columns.add(at + 1);
            at++;
        }
        columns.add(raw.length() + 1);
        return new Unmarked(
                text.toString().isBlank() ? "" : text.toString(),
                columns,
                isHeading ? heading.group(1).length() : 0);
    }
}
