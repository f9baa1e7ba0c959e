package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class YarnTextsTest {
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][A-Za-z.]+)\"");
    private static final Pattern STITCH_WORD = Pattern.compile("(?i)\\b(dc|sc|hdc|htr|tr|dtr|blo|flo|ch)\\b");
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("edgewright.yarn.yarn", Locale.ROOT);
    private static final Set<String> KEYS = BUNDLE.keySet();

    @Test
    void every_text_is_used_and_every_text_that_is_used_is_there() throws IOException {
        Set<String> used = literals();
        assertThat(KEYS).allSatisfy(key -> assertThat(used).anyMatch(literal -> names(literal, key)));
        assertThat(used).allSatisfy(literal -> assertThat(KEYS).anyMatch(key -> names(literal, key)));
    }

    @Test
    void no_text_names_a_stitch_whose_name_depends_on_the_terms() {
        assertThat(KEYS).allSatisfy(key -> assertThat(BUNDLE.getString(key)).doesNotContainPattern(STITCH_WORD));
    }

    /** A literal is a key, or the beginning of keys up to a full stop. */
    private static boolean names(String literal, String key) {
        return key.equals(literal) || (literal.endsWith(".") && key.startsWith(literal));
    }

    private static Set<String> literals() throws IOException {
        Set<String> literals = new TreeSet<>();
        for (String source : List.of("YarnSentences", "YarnTexts")) {
            Matcher found =
                    LITERAL.matcher(Files.readString(Path.of("src/main/java/edgewright/yarn/" + source + ".java")));
            while (found.find()) {
                literals.add(found.group(1));
            }
        }
        literals.remove("edgewright.yarn.yarn");
        return literals;
    }
}
