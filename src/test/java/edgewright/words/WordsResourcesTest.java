package edgewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Counting;
import edgewright.chart.Hand;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
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
    void everyTextIsAskedForByTheCode(String name) throws IOException {
        List<String> literals = literals();
        List<String> unused = new ArrayList<>();
        for (String key : bundle(name).keySet()) {
            boolean used = literals.stream()
                            .anyMatch(literal -> key.equals(literal)
                                    || key.equals("expected." + literal)
                                    || (key.startsWith(literal) && ENDINGS.contains(key.substring(literal.length()))))
                    || Stream.of(Stitch.values())
                            .map(Texts::stitchKey)
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
    void everyTextThatTheCodeAsksForIsThere() throws IOException {
        // The names that stand in calls; those that are put together are asked for by the tests of reading back.
        Pattern call = Pattern.compile("\\b(text|prose|words|take|is|require|stop|stopAt|phrases|expected|problem)"
                + "\\((?:[a-zA-Z.]+(?:\\([^()]*\\))*, )?\"([A-Za-z][A-Za-z0-9.]*)\"");
        Set<String> all = new TreeSet<>();
        for (String name : List.of("pattern", "reader", "terms_UK")) {
            all.addAll(bundle(name).keySet());
        }
        Set<String> missing = new TreeSet<>();
        for (Matcher found : (Iterable<Matcher>) matches(call)::iterator) {
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
        for (Part.Kind kind : Part.Kind.values()) {
            if (kind != Part.Kind.HEADING && kind != Part.Kind.COUNTS) {
                assertThat(Texts.ofReader().words("heading." + kind))
                        .contains(Texts.ofPattern().text("heading." + kind));
            }
        }
    }

    private static Set<String> endings() {
        Set<String> endings = new TreeSet<>(Set.of(".one", ".more", "1", "2", "3", ".end"));
        Stream.of(Part.Kind.values(), Counting.values(), Terms.values(), Side.values(), Hand.values())
                .flatMap(Stream::of)
                .forEach(value -> endings.add(value.toString()));
        return endings;
    }

    private static ResourceBundle bundle(String name) {
        return ResourceBundle.getBundle("edgewright.words." + name, java.util.Locale.ROOT);
    }

    private static List<String> literals() throws IOException {
        return matches(LITERAL).map(found -> found.group(1)).toList();
    }

    private static Stream<Matcher> matches(Pattern pattern) throws IOException {
        List<Matcher> matches = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/edgewright/words"))) {
            for (Path file : files.toList()) {
                String source = Files.readString(file);
                for (Matcher matcher = pattern.matcher(source); matcher.find(); ) {
                    Matcher found = pattern.matcher(source);
                    found.find(matcher.start());
                    matches.add(found);
                }
            }
        }
        return matches.stream();
    }
}
