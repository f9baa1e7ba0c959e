package edgewright.texts;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Words that a dialect spells otherwise. It changes what a file of messages says itself, never a value that is filled in: a title
 * or the name of a yarn stays as its designer spells it.
 *
 * @param words each word as the files of the language spell it, in small letters, with the spelling of the dialect; both may take
 *     an s at their end
 */
record Respelling(Map<String, String> words) {
    /** A dialect that spells every word as the files do. */
    static final Respelling NONE = new Respelling(Map.of());

    Respelling {
        words = Map.copyOf(words);
    }

    /** Of pairs such as {@code grey: gray}, parted by bars. */
    static Respelling of(String pairs) {
        Map<String, String> words = new TreeMap<>();
        for (String pair : pairs.split("\\|")) {
            int colon = pair.indexOf(':');
            if (colon < 0
                    || words.put(
                                    pair.substring(0, colon).strip(),
                                    pair.substring(colon + 1).strip())
                            != null) {
                throw new IllegalArgumentException("no pair of spellings, or one given twice: " + pair.strip());
            }
        }
        return new Respelling(words);
    }

    /**
     * The source of a message with its words respelled. What names a value, a message or a variant is left alone: it follows a
     * dollar sign, a bracket or a hyphen, or is followed by a hyphen.
     */
    String respelled(String source) {
        return words.isEmpty()
                ? source
                : any().matcher(source)
                        .replaceAll(found -> Matcher.quoteReplacement(inDialect(found.group(1)) + found.group(2)));
    }

    private Pattern any() {
        String either = words.keySet().stream().map(Pattern::quote).collect(Collectors.joining("|"));
        return Pattern.compile(
                "(?<![\\p{L}\\p{N}$\\[-])(" + either + ")(s?)(?![\\p{L}\\p{N}-])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private String inDialect(String word) {
        String other = words.get(word.toLowerCase(Locale.ROOT));
        return Character.isUpperCase(word.charAt(0))
                ? other.substring(0, 1).toUpperCase(Locale.ROOT) + other.substring(1)
                : other;
    }
}
