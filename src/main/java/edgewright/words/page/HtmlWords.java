package edgewright.words.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/** Words as they stand in a page of HTML. */
final class HtmlWords {
    private HtmlWords() {}

    /** Words for HTML. Characters that it does not allow become the sign for an unknown character. */
    static String escape(String words) {
        return words.codePoints()
                .mapToObj(c -> switch (c) {
                    case '&' -> "&amp;";
                    case '<' -> "&lt;";
                    case '>' -> "&gt;";
                    default -> isAllowed(c) ? Character.toString(c) : "\ufffd";
                })
                .collect(Collectors.joining());
    }

    /** What https://html.spec.whatwg.org/multipage/syntax.html#text-2 lets stand in text. */
    private static boolean isAllowed(int c) {
        boolean control = Character.getType(c) == Character.CONTROL && c != '\t' && c != '\n';
        boolean surrogate = Character.getType(c) == Character.SURROGATE;
        boolean nonCharacter = (c & 0xfffe) == 0xfffe || (c >= 0xfdd0 && c <= 0xfdef);
        return !control && !surrogate && !nonCharacter;
    }

    /** How a page looks, for its head. */
    static String style() {
        try (InputStream css = HtmlPage.class.getResourceAsStream("/edgewright/words/page.css")) {
            return new String(css.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
