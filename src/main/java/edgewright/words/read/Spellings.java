package edgewright.words.read;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The spellings of one thing, each as small words and signs, the longest first.
 *
 * @param first as the writer has it
 * @param optional whether it may be left out
 */
record Spellings(List<List<String>> spellings, String first, boolean optional) {

    static Spellings of(Stream<String> all) {
        List<String> given = all.toList();
        List<List<String>> spellings = given.stream()
                .filter(spelling -> !Grammar.mayBeLeftOut(spelling))
                .map(spelling ->
                        Token.of(spelling, 1).stream().map(Token::lower).toList())
                .distinct()
                .sorted(Comparator.<List<String>>comparingInt(List::size).reversed())
                .toList();
        return new Spellings(
                spellings, given.isEmpty() ? "" : given.get(0), given.stream().anyMatch(Grammar::mayBeLeftOut));
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
        int longest = 0;
        for (List<String> spelling : spellings) {
            longest = Math.max(longest, begins(spelling, tokens, start));
        }
        return longest;
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
