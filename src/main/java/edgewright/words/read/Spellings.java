package edgewright.words.read;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The spellings of one thing, each as small words and signs, the longest first. */
record Spellings(List<List<String>> spellings) {

    static Spellings of(Stream<String> spellings) {
        return new Spellings(spellings
                .map(spelling ->
                        Token.of(spelling, 1).stream().map(Token::lower).toList())
                .sorted(Comparator.<List<String>>comparingInt(List::size).reversed())
                .toList());
    }

    /** How many tokens from {@code start} on the longest spelling takes that stands there; 0 if none does. */
    int matches(List<Token> tokens, int start) {
        for (List<String> spelling : spellings) {
            if (begins(spelling, tokens, start) == spelling.size()) {
                return spelling.size();
            }
        }
        return 0;
    }

    /** How many tokens from {@code start} on could be the beginning of a spelling. */
    int begins(List<Token> tokens, int start) {
        return spellings.stream()
                .mapToInt(spelling -> begins(spelling, tokens, start))
                .max()
                .orElse(0);
    }

    private static int begins(List<String> spelling, List<Token> tokens, int start) {
        int n = 0;
        while (n < spelling.size()
                && start + n < tokens.size()
                && tokens.get(start + n).is(spelling.get(n))) {
            n++;
        }
        return n;
    }
}
