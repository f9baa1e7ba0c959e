package edgewright.words.grammar;

import edgewright.texts.Language;
import edgewright.words.terms.Bars;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Single words that tell something beside others, in any case of letters. They lie in the lexicon under one key. */
public final class WordSet {
    private final Set<String> words;

    private WordSet(Set<String> words) {
        this.words = words;
    }

    /** The words under this key of the lexicon. */
    public static WordSet of(Language language, String key) {
        return new WordSet(Bars.parted(language.messages(Lexicon.BUNDLE).text(key)).stream()
                .map(word -> word.toLowerCase(Locale.ROOT))
                .collect(Collectors.toUnmodifiableSet()));
    }

    /** The same as alternatives of a regular expression, the longest first; blanks stand for any number of them. */
    public static String alternatives(Language language, String key) {
        return Bars.parted(language.messages(Lexicon.BUNDLE).text(key)).stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(words -> Stream.of(words.split(" ")).map(Pattern::quote).collect(Collectors.joining(" +")))
                .collect(Collectors.joining("|"));
    }

    public boolean has(Lexeme word) {
        return has(word.text());
    }

    public boolean has(String word) {
        return words.contains(word.toLowerCase(Locale.ROOT));
    }

    /** Whether one of these stands among others. */
    public boolean anyIn(List<Lexeme> others) {
        return others.stream().anyMatch(this::has);
    }
}
