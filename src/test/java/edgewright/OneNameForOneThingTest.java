package edgewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * One name for one thing, in every text that a person reads: the bundles, the README and the pages of the rules. What other
 * people may write, and the program understands, stands in the reader's words and is not held to this.
 */
class OneNameForOneThingTest {
    private static final Path RESOURCES = Path.of("src/main/resources/edgewright");

    /**
     * A word that is not used.
     *
     * @param word as it would stand in a text
     * @param instead what is said instead
     * @param except the texts in which the word means another thing, each by its whole name
     */
    private record Unused(Pattern word, String instead, List<String> except) {
        static Unused word(String word, String instead, String... except) {
            return new Unused(Pattern.compile("(?i)" + word), instead, List.of(except));
        }
    }

    private static final List<Unused> UNUSED = List.of(
            Unused.word("\\blimbs?\\b", "arm"),
            Unused.word("(?<!--)\\bcells?\\b", "square"),
            Unused.word("\\b(level|upright)\\b(?! water)", "top and bottom, left and right"),
            Unused.word("\\blaws?\\b", "rule"),
            Unused.word("\\bnought\\b", "0"),
            Unused.word("\\b(nobody|somebody) (has|knows|can)\\b", "what is not there"),
            // A round is closed with a join, and the desk when the work is done.
            Unused.word(
                    "\\bclos(e|es|ed|ing)\\b(?! (the|a|every) round)",
                    "come out even",
                    "language/en/desk tab-close",
                    "language/en/desk/parts action-quit",
                    "language/en/words/write joining-closeSomeAtCorner",
                    "language/en/words/write needs-contrast"),
            Unused.word("\\b(words|sizes|pieces|stitches)\\b.{0,20}\\b(checked|worked back)\\b", "proved"),
            Unused.word("\\bheld? .{0,40}\\bto the chart\\b", "compare with"),
            Unused.word(
                    "\\btake[sn]? (\\w+ )*(rounds?|columns?)( \\w+)? out\\b|\\b(rounds?|column) (\\{\\S+ )?out\\b",
                    "delete"),
            Unused.word(
                    "\\bremoves?d?\\b",
                    "take out (stitches), delete (rounds and columns)",
                    "language/en/desk/parts action-removeYarn",
                    "language/en/desk/parts tip-removeYarn",
                    "language/en/desk/work edit-removeYarn",
                    "language/en/desk/panes yarns-button-removeYarn"),
            Unused.word(
                    "(?<!never |in[ ~\\u00a0-]|just |is )\\bturn(s|ed)?\\b(?! (its|their|the) corners?\\b)(?! on\\b)",
                    "rotate (a chart); never turn the work"),
            Unused.word("\\b(parts? (from|to|at) the corners?|the parts\\b)", "section"),
            Unused.word("(\\b(top|left|bottom|right)|\\}) side[,:]", "top edge, right-hand edge"),
            Unused.word("\\b(in a row\\b|break the row|row is whole|draw a row)", "run, repeat"),
            Unused.word("\\b(is|are|each|be|only) told\\b(?! apart)|\\btold of\\b", "report, say"),
            Unused.word("\\bnot said\\b", "not given"),
            Unused.word("\\bpixels an? \\w+", "pixels per inch, per square"),
            Unused.word("\\b(has|have) not the\\b", "is not the"),
            Unused.word("\\bas it is to stand\\b|\\bto stand on the first\\b", "as printed, to print"),
            Unused.word("\\bfit (in|to)? ?the window\\b", "whole chart"),
            Unused.word("\\bthe V of\\b|\\breal stitch\\b", "both top loops, counted stitch"));

    @Test
    void noTextCallsAThingByASecondName() throws IOException {
        List<String> found = new ArrayList<>();
        texts().forEach((place, text) -> UNUSED.stream()
                .filter(unused -> !unused.except().contains(place))
                .filter(unused -> unused.word().matcher(text).find())
                .forEach(unused -> found.add(place + " has '" + unused.word() + "'; say: " + unused.instead())));
        assertThat(found).isEmpty();
    }

    @Test
    void everyExceptionIsNeeded() throws IOException {
        Map<String, String> texts = texts();
        List<String> idle = new ArrayList<>();
        for (Unused unused : UNUSED) {
            for (String place : unused.except()) {
                if (!unused.word().matcher(texts.getOrDefault(place, "")).find()) {
                    idle.add(place + " for " + unused.word());
                }
            }
        }
        assertThat(idle).isEmpty();
    }

    /** 'Yarn round hook' in UK terms: https://cdn.shopify.com/s/files/1/1537/8529/files/iw_CB1616_Granny_Square_Crochet_5c_9.pdf */
    @Test
    void theYarnGoesRoundTheHookInUKTermsAndOverItInUSTerms() throws IOException {
        assertThat(meanings("uk", "yarn round hook"))
                .isEqualTo(meanings("us", "yarn over"))
                .hasSize(2);
        assertThat(meanings("uk", "yarn over")).isEmpty();
        assertThat(meanings("us", "yarn round hook")).isEmpty();
    }

    private static Set<String> meanings(String dialect, String words) throws IOException {
        Set<String> keys = new TreeSet<>();
        messages(RESOURCES.resolve("language/en/" + dialect + "/terms.ftl")).forEach((key, text) -> {
            if (text.replaceAll("\\s+", " ").contains(words)) {
                keys.add(key);
            }
        });
        return keys;
    }

    /** Every text by its place: bundle and key, page of a rule, or the README. */
    private static Map<String, String> texts() throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            for (Path file : files.sorted().toList()) {
                String name = RESOURCES.relativize(file).toString().replace('\\', '/');
                if (name.endsWith(".properties") && !name.startsWith("desk/look/")) {
                    String place = name.replace(".properties", " ");
                    bundle(file).forEach((key, text) -> texts.put(place + key, text));
                } else if (name.endsWith(".ftl")
                        && !name.endsWith("words/spellings.ftl")
                        && !name.endsWith("words/others-lexicon.ftl")) {
                    messages(file).forEach((key, text) -> texts.put(name.replace(".ftl", " ") + key, text));
                } else if (name.contains("/check/rules/")) {
                    texts.put(name.replace(".txt", ""), Files.readString(file).replaceFirst("^law:", ""));
                }
            }
        }
        texts.put("README", withoutCode(Files.readString(Path.of("README.md"))));
        assertThat(texts).hasSizeGreaterThan(1000);
        return texts;
    }

    /** The messages of a file by their keys: a key stands at the beginning of its line, what goes on is indented. */
    private static Map<String, String> messages(Path file) throws IOException {
        Map<String, String> messages = new LinkedHashMap<>();
        String key = "";
        for (String line : Files.readAllLines(file)) {
            int sign = line.indexOf('=');
            if (line.startsWith(" ") || line.startsWith("\t")) {
                messages.merge(key, line, String::concat);
            } else if (sign > 0 && !line.startsWith("#")) {
                key = line.substring(0, sign).strip();
                messages.put(key, line.substring(sign + 1));
            }
        }
        return messages;
    }

    private static String withoutCode(String markdown) {
        return markdown.replaceAll("(?s)```.*?```", "")
                .replaceAll("`[^`]*`", "")
                .replaceAll("(?m)^ {4}.*$", "");
    }

    /** The texts of a bundle without the marks of mnemonics, and without its keys for the keyboard. */
    private static Map<String, String> bundle(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            properties.load(reader);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().stream()
                .filter(key -> !key.endsWith(".key") && !key.endsWith(".keys") && !key.endsWith(".read"))
                .forEach(key -> texts.put(key, properties.getProperty(key).replace("&", "")));
        return texts;
    }
}
