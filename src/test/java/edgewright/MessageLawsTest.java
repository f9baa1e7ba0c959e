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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the messages of every language to the sources, and the sources to the messages. */
class MessageLawsTest {
    private static final Path LANGUAGES = Path.of("src/main/resources/edgewright/language");
    /** The language of the tests of texts and words. */
    private static final Path INVENTED = Path.of("src/test/resources/edgewright/language/art-x-marsh");

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
            // What the reader reads it asks for by key; WordsResourcesTest sees that nothing there is unused.
            if (!isOfReaders(bundle) && !bundle.endsWith("/spelling")) {
                objections.addAll(
                        objections(MessageFile.read(LANGUAGES.resolve(FIRST).resolve(bundle + ".ftl")), uses(bundle)));
            }
        }
        assertThat(objections).isEmpty();
    }

    @Test
    void theDialectsOfALanguageHaveTheSameMessagesWithTheSameValues() throws IOException {
        for (Path language : List.of(LANGUAGES.resolve(FIRST), INVENTED)) {
            assertThat(terms(language, "uk")).isNotEmpty().isEqualTo(terms(language, "us"));
        }
    }

    private static Map<String, Set<String>> terms(Path language, String dialect) throws IOException {
        return MessageFile.read(language.resolve(dialect).resolve("terms.ftl")).arguments();
    }

    /** So that a pattern is read alike whichever way it is spelled. */
    @Test
    void everyWordThatADialectSpellsOtherwiseIsSaidSomewhereButInNothingThatIsRead() throws IOException {
        String said = "";
        String read = "";
        for (String bundle : bundles(LANGUAGES.resolve(FIRST))) {
            String text = Files.readString(LANGUAGES.resolve(FIRST).resolve(bundle + ".ftl"));
            if (bundle.equals("words/spellings") || bundle.equals("words/phrases")) {
                read += text.replaceAll("(?m)^#.*$", "");
            } else if (!bundle.endsWith("/spelling") && !isOfReaders(bundle)) {
                said += text;
            }
        }
        Matcher pair = Pattern.compile("(\\w+): \\w+")
                .matcher(Language.of(FIRST).messages("us/spelling").text("respelled"));
        int pairs = 0;
        while (pair.find()) {
            Pattern word = Pattern.compile("(?i)(?<![\\w$-])" + pair.group(1) + "s?(?![\\w-])");
            assertThat(said).as(pair.group()).containsPattern(word);
            assertThat(read).as(pair.group()).doesNotContainPattern(word);
            pairs++;
        }
        assertThat(pairs).isGreaterThanOrEqualTo(8);
    }

    @Test
    void theInventedLanguageCanSayAllThatAPatternSays() throws IOException {
        for (String bundle : bundles(LANGUAGES.resolve(FIRST))) {
            boolean ofPattern = bundle.startsWith("words/") || bundle.endsWith("/terms");
            if (ofPattern && !isOfReaders(bundle) && !bundle.equals("words/others")) {
                assertThat(said(INVENTED, bundle)).as(bundle).isEqualTo(said(LANGUAGES.resolve(FIRST), bundle));
            }
        }
    }

    /** What readers ask for by key; how others write is known for English alone. */
    private static boolean isOfReaders(String bundle) {
        return bundle.equals("words/spellings")
                || bundle.equals("words/others-lexicon")
                || (bundle.endsWith("/others") && !bundle.startsWith("words/"));
    }

    /**
     * Who says the messages of a bundle: the package of its name, without its rooms that have bundles of their own; the rooms of
     * words, and those of the desk; or, for the terms, their room.
     */
    private static List<MessageUse> uses(String bundle) throws IOException {
        if (bundle.equals("words/phrases")) {
            return MessageUse.in(SOURCES.resolve("words"), "phrases");
        }
        if (bundle.equals("desk/common")) {
            return MessageUse.in(SOURCES.resolve("desk"), "common");
        }
        if (bundle.equals("desk")) {
            return MessageUse.alone(SOURCES.resolve("desk"));
        }
        if (bundle.equals("words/others")) {
            return MessageUse.in(SOURCES.resolve("words/grammar"));
        }
        boolean ofDialect = bundle.endsWith("/terms");
        return MessageUse.in(SOURCES.resolve(ofDialect ? "words/terms" : bundle));
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

    /** The bundles by their names, those of dialects and rooms with their folder. */
    private static List<String> bundles(Path language) throws IOException {
        try (Stream<Path> files = Files.walk(language)) {
            return files.map(file -> language.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> name.endsWith(".ftl") && !name.equals("language.ftl"))
                    .map(name -> name.substring(0, name.length() - ".ftl".length()))
                    .sorted()
                    .toList();
        }
    }

    private static Map<String, Map<String, Set<String>>> everything(Path language) throws IOException {
        Map<String, Map<String, Set<String>>> everything = new TreeMap<>();
        for (String bundle : bundles(language)) {
            if (!isOfReaders(bundle)) {
                everything.put(bundle, said(language, bundle));
            }
        }
        return everything;
    }

    /** The messages of a bundle that code says. A word in a phrase is the language's own: it is said by its phrase. */
    private static Map<String, Set<String>> said(Path language, String bundle) throws IOException {
        Map<String, Set<String>> said =
                MessageFile.read(language.resolve(bundle + ".ftl")).arguments();
        if (bundle.equals("words/phrases")) {
            said.keySet().removeIf(key -> key.endsWith("-word"));
        }
        return said;
    }
}
