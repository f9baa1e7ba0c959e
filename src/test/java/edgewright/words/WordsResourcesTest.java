package edgewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.testing.Sources;
import edgewright.words.page.PatternPart;
import edgewright.words.terms.Phrasebook;
import java.util.ArrayList;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No text is missing, and none lies about unused. */
class WordsResourcesTest {
    private static final Pattern LITERAL = Pattern.compile("\"([A-Za-z][A-Za-z0-9]*(?:\\.[A-Za-z0-9]+)*\\.?)\"");

    /** What code puts behind a literal to make the name of a text. */
    private static final Set<String> ENDINGS = endings();

    @ParameterizedTest
    @ValueSource(strings = {"pattern", "reader", "terms_UK", "terms_US"})
    void everyTextIsAskedForByTheCode(String name) {
        List<String> literals = literals();
        List<String> unused = new ArrayList<>();
        for (String key : bundle(name).keySet()) {
            boolean used = literals.stream()
                            .anyMatch(literal -> key.equals(literal)
                                    || key.equals("expected." + literal)
                                    || (key.startsWith(literal) && ENDINGS.contains(key.substring(literal.length()))))
                    || Stream.of(Stitch.values())
                            .map(Phrasebook::stitchKey)
                            .anyMatch(
                                    stitch -> key.matches(stitch + "\\.(short|read|meaning|together(Read|Meaning)?)"));
            if (!used) {
                unused.add(key);
            }
        }
        assertThat(unused).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Terms.class)
    void bothTermsHaveTheSameTexts(Terms terms) {
        assertThat(new TreeSet<>(bundle("terms_" + terms).keySet()))
                .isEqualTo(new TreeSet<>(bundle("terms_UK").keySet()));
    }

    @Test
    void everyTextThatTheCodeAsksForIsThere() {
        // The names that stand in calls; those that are put together are asked for by the tests of reading back.
        Pattern call = Pattern.compile("\\b(text|prose|words|take|is|require|stop|stopAt|phrases|expected|problem)"
                + "\\((?:[a-zA-Z.]+(?:\\([^()]*\\))*, )?\"([A-Za-z][A-Za-z0-9.]*)\"");
        Set<String> all = new TreeSet<>();
        for (String name : List.of("pattern", "reader", "terms_UK")) {
            all.addAll(bundle(name).keySet());
        }
        Set<String> missing = new TreeSet<>();
        for (MatchResult found : matches(call).toList()) {
            String key = found.group(2);
            boolean prefix = key.endsWith(".");
            boolean there = prefix
                    ? all.stream().anyMatch(each -> each.startsWith(key))
                    : all.contains(key) || all.contains("expected." + key);
            if (!there) {
                missing.add(key);
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void theReaderKnowsEveryHeadingThatTheWriterWrites() {
        for (PatternPart.Kind kind : PatternPart.Kind.values()) {
            if (kind != PatternPart.Kind.HEADING && kind != PatternPart.Kind.COUNTS) {
                assertThat(Phrasebook.ofReader().words("heading." + kind))
                        .contains(Phrasebook.ofPattern().text("heading." + kind));
            }
        }
    }

    private static Set<String> endings() {
        Set<String> endings = new TreeSet<>(Set.of(".one", ".more", "1", "2", "3", ".end"));
        Stream.of(PatternPart.Kind.values(), Counting.values(), Terms.values(), Side.values(), HookHand.values())
                .flatMap(Stream::of)
                .forEach(value -> endings.add(value.toString()));
        return endings;
    }

    private static ResourceBundle bundle(String name) {
        return ResourceBundle.getBundle("edgewright.words." + name, java.util.Locale.ROOT);
    }

    private static List<String> literals() {
        return matches(LITERAL).map(found -> found.group(1)).toList();
    }

    private static Stream<MatchResult> matches(Pattern pattern) {
        return Sources.of("words").stream()
                .flatMap(source -> pattern.matcher(source).results());
    }
}
