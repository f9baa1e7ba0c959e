package edgewright.desk;

import edgewright.texts.Language;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The invented language on the desk. What patterns say, it says in its own words; all else is made from the English files by a
 * rule, so that no second set of files has to be kept: each word ends in letters that English does not have, and is about two
 * fifths longer for them. So a word without such a letter comes from no file.
 */
final class LongLanguage {
    /** The letters that end its words. */
    static final String LETTERS = "äšëčïňöłüž";

    private static final String TAG = "art-x-marsh-long";
    private static final Path ENGLISH = Path.of("src/main/resources/edgewright/language/en");
    private static final Path INVENTED = Path.of("src/test/resources/edgewright/language/art-x-marsh");

    /** What is no text of a message: comments, keys, keystrokes, values and the heads of choices; or a word. */
    private static final Pattern PARTS = Pattern.compile(
            "^#.*$|^key-.* =.*$|^[A-Za-z][\\w-]* =|\\{[^{}]*?->|\\{[^{}]*\\}"
                    + "|^\\s*\\*?\\[[^\\]]*\\]|#\\w{6}|https?:\\S+|(?<word>[A-Za-z&]{2,})",
            Pattern.MULTILINE);

    private LongLanguage() {}

    /** Lays its files beside the classes of the tests, and reads it. */
    static Language make() {
        try {
            Path to = Path.of(LongLanguage.class
                            .getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .resolve("edgewright/language")
                    .resolve(TAG);
            for (Path file : files()) {
                Path name = ENGLISH.relativize(file);
                Path own = INVENTED.resolve(name);
                boolean saysItself = Files.exists(own) && !name.toString().equals("fit.ftl");
                Files.createDirectories(to.resolve(name).getParent());
                Files.writeString(
                        to.resolve(name), saysItself ? Files.readString(own) : longer(name, Files.readString(file)));
            }
            return Language.of(TAG);
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(ENGLISH)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith("spelling.ftl"))
                    .toList();
        }
    }

    private static String longer(Path name, String text) {
        if (name.endsWith("others.ftl") || name.endsWith("others-lexicon.ftl")) {
            // What others write is read as it is.
            return text;
        }
        if (name.toString().endsWith(".txt")) {
            return text.lines()
                    .map(line -> line.contains(".") ? longer(line) : line)
                    .reduce("", (before, line) -> before + line + "\n");
        }
        return longer(text);
    }

    private static String longer(String text) {
        Matcher parts = PARTS.matcher(text);
        return parts.replaceAll(part -> Matcher.quoteReplacement(
                parts.group("word") == null ? part.group() : part.group() + ending(part.group())));
    }

    private static String ending(String word) {
        int letters = (int) Math.ceil(0.4 * word.replace("&", "").length());
        return (LETTERS + LETTERS).substring(word.length() % LETTERS.length()).substring(0, Math.min(letters, 10));
    }
}
