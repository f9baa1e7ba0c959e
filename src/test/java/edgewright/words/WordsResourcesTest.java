package edgewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.testing.Sources;
import edgewright.texts.English;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No spelling lies about unused, and none that the reader asks for is missing. That every phrase is said is held by {@code
 * MessageLawsTest}.
 */
class WordsResourcesTest {
    private static final Pattern LITERAL = Pattern.compile("\"([A-Za-z][A-Za-z_0-9-]*)\"");
    private static final Pattern ASKED =
            Pattern.compile("\\b(?:take|takeWord|is|opens|between|listed|all)\\(\"([A-Za-z][A-Za-z_0-9-]*)\"");
    private static final Pattern ANOTHER_FORM = Pattern.compile("also-(.*)-\\d+");

    private static final Set<String> PHRASES =
            English.LANGUAGE.messages("words/phrases").keys();
    private static final Set<String> SPELLINGS =
            English.LANGUAGE.messages("words/spellings").keys();

    @Test
    void everySpellingIsOneOfAPhraseOrIsAskedForByTheReader() {
        Set<String> asked = found(LITERAL);
        Set<String> unused = new TreeSet<>(SPELLINGS);
        unused.removeAll(PHRASES);
        unused.removeAll(asked);
        unused.removeIf(key -> {
            var form = ANOTHER_FORM.matcher(key);
            return form.matches() && PHRASES.contains(form.group(1));
        });
        // Words in the forms that only the reader has.
        assertThat(unused)
                .containsExactly(
                        "from-word", "per-side-word", "side-word", "this-side-word", "way-STITCHES", "way-WITH_CHAINS");
    }

    @Test
    void everyPhraseThatTheReaderAsksForIsThere() {
        Set<String> asked = found(ASKED);
        assertThat(asked).contains("alike", "runs-next", "edge-");
        assertThat(asked)
                .allSatisfy(key -> assertThat(PHRASES.contains(key) || SPELLINGS.contains(key) || hasFamily(key))
                        .as(key)
                        .isTrue());
    }

    private static boolean hasFamily(String beginning) {
        return beginning.endsWith("-")
                && Stream.concat(PHRASES.stream(), SPELLINGS.stream()).anyMatch(key -> key.startsWith(beginning));
    }

    private static Set<String> found(Pattern pattern) {
        return Sources.of("words").stream()
                .flatMap(source -> pattern.matcher(source).results())
                .map(match -> match.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
