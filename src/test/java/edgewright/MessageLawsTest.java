package edgewright;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.texts.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the messages of every language to the sources, and the sources to the messages. */
class MessageLawsTest {
    private static final Path LANGUAGES = Path.of("src/main/resources/edgewright/language");
    private static final Path SOURCES = Path.of("src/main/java/edgewright");
    private static final String FIRST = "en";

    @TempDir
    Path folder;

    @Test
    void everyMessageIsUsedWithTheValuesThatItNamesAndEveryKeyInTheSourcesIsThere() throws IOException {
        List<String> bundles = bundles(LANGUAGES.resolve(FIRST));
        assertThat(bundles).contains("draw", "yarn");
        List<String> objections = new ArrayList<>();
        for (String bundle : bundles) {
            objections.addAll(objections(
                    MessageFile.read(LANGUAGES.resolve(FIRST).resolve(bundle + ".ftl")),
                    MessageUse.in(SOURCES.resolve(bundle))));
        }
        assertThat(objections).isEmpty();
    }

    @Test
    void everyLanguageHasTheSameMessagesWithTheSameValues() throws IOException {
        Map<String, Map<String, Set<String>>> first = everything(LANGUAGES.resolve(FIRST));
        assertThat(first).isNotEmpty();
        try (Stream<Path> languages = Files.list(LANGUAGES)) {
            assertThat(languages)
                    .allSatisfy(language -> assertThat(everything(language)).isEqualTo(first));
        }
    }

    @Test
    void theProgramReadsTheMessagesThatTheLibraryReads() throws IOException {
        for (String bundle : bundles(LANGUAGES.resolve(FIRST))) {
            Set<String> keys = MessageFile.read(LANGUAGES.resolve(FIRST).resolve(bundle + ".ftl"))
                    .arguments()
                    .keySet();
            assertThat(Language.of(FIRST).messages(bundle).keys()).isEqualTo(keys);
        }
    }

    @Test
    void whatNamesAThingIsNowhereGroupedAsAnAmount() throws IOException {
        Set<String> counts = new TreeSet<>();
        Set<String> numbers = new TreeSet<>();
        for (MessageUse use : MessageUse.in(SOURCES)) {
            use.arguments().forEach((name, kind) -> {
                if (kind.equals("count")) {
                    counts.add(name);
                } else if (kind.equals("number")) {
                    numbers.add(name);
                }
            });
        }
        assertThat(numbers).contains("round").doesNotContainAnyElementsOf(counts);
    }

    @Test
    void theLawSeesWhatIsMissingSuperfluousOrHidden() throws IOException {
        Path messages = folder.resolve("tide.ftl");
        Files.writeString(messages, """
                ebb = ebb
                flow = flow of { $metres } m
                pool-ROCK = { $stitches ->
                    [one] one
                   *[other] { -many }
                }
                unused = unused
                -many = many
                """);
        Files.writeString(folder.resolve("Tide.java"), """
                class Tide {
                    void all(Tide says, boolean high, Object pool, String key) {
                        says.text("ebb");
                        says.text(high ? "flow" : "ebb", shortest("metres", 1, 2));
                        says.text("pool-" + pool, count("stitches", 1));
                        says.text("flow", count("metre", 1));
                        says.text(key);
                        says.text("neap");
                        says.text("reef-" + pool);
                        says.text("flow", made());
                    }
                }
                """);

        assertThat(objections(MessageFile.read(messages), MessageUse.in(folder)))
                .containsExactly(
                        "Tide.java:4 says ebb with [metres], but it takes []",
                        "Tide.java:6 says flow with [metre], but it takes [metres]",
                        "Tide.java:7 does not show which message it means",
                        "Tide.java:8 says neap, which is no message",
                        "Tide.java:9 says reef-..., which is no message",
                        "Tide.java:10 says flow with [made()], but it takes [metres]",
                        "nobody says unused");
    }

    /** What is wrong between a bundle and the sources that speak it. */
    private static List<String> objections(MessageFile file, List<MessageUse> uses) {
        Map<String, Set<String>> messages = file.arguments();
        List<String> objections = new ArrayList<>();
        for (MessageUse use : uses) {
            if (use.keys().isEmpty()) {
                objections.add(use.place() + " does not show which message it means");
            }
            for (String key : use.keys()) {
                objections.addAll(use.family() ? ofFamily(key, use, messages) : ofOne(key, use, messages));
            }
        }
        messages.keySet().stream()
                .filter(key -> uses.stream().noneMatch(use -> use.means(key))
                        && !file.referred().contains(key))
                .forEach(key -> objections.add("nobody says " + key));
        return objections;
    }

    private static List<String> ofOne(String key, MessageUse use, Map<String, Set<String>> messages) {
        Set<String> taken = messages.get(key);
        if (taken == null) {
            return List.of(use.place() + " says " + key + ", which is no message");
        }
        return use.arguments().keySet().equals(taken)
                ? List.of()
                : List.of(use.place() + " says " + key + " with "
                        + use.arguments().keySet() + ", but it takes " + taken);
    }

    /** A family takes what its members take; a member may leave a value out. */
    private static List<String> ofFamily(String beginning, MessageUse use, Map<String, Set<String>> messages) {
        Set<String> taken = new TreeSet<>();
        messages.forEach((key, names) -> {
            if (key.startsWith(beginning)) {
                taken.addAll(names);
            }
        });
        if (messages.keySet().stream().noneMatch(key -> key.startsWith(beginning))) {
            return List.of(use.place() + " says " + beginning + "..., which is no message");
        }
        return use.arguments().keySet().equals(taken)
                ? List.of()
                : List.of(use.place() + " says " + beginning + "... with "
                        + use.arguments().keySet() + ", but they take " + taken);
    }

    /** The bundles that a package speaks, by its name. */
    private static List<String> bundles(Path language) throws IOException {
        try (Stream<Path> files = Files.list(language)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".ftl") && !name.equals("language.ftl"))
                    .map(name -> name.substring(0, name.length() - ".ftl".length()))
                    .sorted()
                    .toList();
        }
    }

    private static Map<String, Map<String, Set<String>>> everything(Path language) throws IOException {
        Map<String, Map<String, Set<String>>> everything = new TreeMap<>();
        for (String bundle : bundles(language)) {
            everything.put(
                    bundle, MessageFile.read(language.resolve(bundle + ".ftl")).arguments());
        }
        return everything;
    }
}
