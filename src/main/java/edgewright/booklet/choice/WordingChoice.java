package edgewright.booklet.choice;

import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.fit.PatternSize;
import java.util.Objects;

/**
 * In which words, and to whom, a pattern is told.
 *
 * @param counting which way of counting is shown first in the table of counts
 * @param hand the hand that holds the hook
 * @param size for which pieces the pattern is; the counts of one of any size are given for a few example sizes
 */
public record WordingChoice(PrintedTerms terms, Counting counting, HookHand hand, PatternSize size) {
    public WordingChoice {
        Objects.requireNonNull(terms);
        Objects.requireNonNull(counting);
        Objects.requireNonNull(hand);
        Objects.requireNonNull(size);
    }

    /** In other terms. */
    public WordingChoice withTerms(PrintedTerms other) {
        return new WordingChoice(other, counting, hand, size);
    }

    /** Counted the other way. */
    public WordingChoice withCounting(Counting other) {
        return new WordingChoice(terms, other, hand, size);
    }

    /** For makers of the other hand. */
    public WordingChoice withHand(HookHand other) {
        return new WordingChoice(terms, counting, other, size);
    }

    /** For a piece on which the repeat is worked that often. */
    public WordingChoice withRepeats(PerSide<Integer> perSide) {
        return withSize(new PatternSize.OfRepeats(perSide));
    }

    /** For other pieces. */
    public WordingChoice withSize(PatternSize other) {
        return new WordingChoice(terms, counting, hand, other);
    }
}
