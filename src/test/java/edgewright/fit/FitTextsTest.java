package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FitTextsTest {
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][A-Za-z.]+)\"");
    private static final Pattern STITCH_WORD = Pattern.compile("(?i)\\b(dc|sc|hdc|htr|tr|dtr|blo|flo|ch)\\b");
    private static final Set<String> KEYS =
            ResourceBundle.getBundle("edgewright.fit.fit", Locale.ROOT).keySet();

    @Test
    void every_text_is_used_and_every_text_that_is_used_is_there() throws IOException {
        Set<String> used = literals();

        assertThat(KEYS).allSatisfy(key -> assertThat(used).anyMatch(literal -> names(literal, key)));
        assertThat(used).allSatisfy(literal -> assertThat(KEYS).anyMatch(key -> names(literal, key)));
    }

    @Test
    void no_text_names_a_stitch_whose_name_depends_on_the_terms() {
        ResourceBundle bundle = ResourceBundle.getBundle("edgewright.fit.fit", Locale.ROOT);
        assertThat(KEYS).allSatisfy(key -> assertThat(bundle.getString(key)).doesNotContainPattern(STITCH_WORD));
    }

    /** A literal is a key, a key but for its .one or .more, or the beginning of keys up to a full stop. */
    private static boolean names(String literal, String key) {
        return key.equals(literal)
                || key.equals(literal + ".one")
                || key.equals(literal + ".more")
                || (literal.endsWith(".") && key.startsWith(literal));
    }

    /** All string literals of the two classes that speak, but for the words that are no names of texts. */
    private static Set<String> literals() throws IOException {
        Set<String> literals = new TreeSet<>();
        try (Stream<Path> sources = Files.list(Path.of("src/main/java/edgewright/fit"))) {
            for (Path source : sources.filter(
                            path -> path.getFileName().toString().matches(".*(Sentences|Texts)\\.java"))
                    .collect(Collectors.toList())) {
                Matcher found = LITERAL.matcher(Files.readString(source));
                while (found.find()) {
                    literals.add(found.group(1));
                }
            }
        }
        literals.remove("edgewright.fit.fit");
        return literals;
    }
}
