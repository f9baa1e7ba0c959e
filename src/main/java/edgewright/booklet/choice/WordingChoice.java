package edgewright.booklet.choice;

import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.fit.PatternSize;
import edgewright.words.write.RoundsLayout;
import java.util.Objects;

/**
 * In which words, and to whom, a pattern is told.
 *
 * @param counting which way of counting is shown first in the table of counts
 * @param hand the hand that holds the hook
 * @param size for which pieces the pattern is; the counts of one of any size are given for a few example sizes
 * @param layout how the rounds are laid out
 * @param eachRound whether each round is told by itself, in full; else rounds that are worked alike stand together
 */
public record WordingChoice(
        PrintedTerms terms,
        Counting counting,
        HookHand hand,
        PatternSize size,
        RoundsLayout layout,
        boolean eachRound) {
    public WordingChoice {
        Objects.requireNonNull(terms);
        Objects.requireNonNull(counting);
        Objects.requireNonNull(hand);
        Objects.requireNonNull(size);
        Objects.requireNonNull(layout);
    }

    /** With the rounds in sentences. */
    public WordingChoice(PrintedTerms terms, Counting counting, HookHand hand, PatternSize size) {
        this(terms, counting, hand, size, RoundsLayout.SENTENCES, false);
    }

    /** In other terms. */
    public WordingChoice withTerms(PrintedTerms other) {
        return new WordingChoice(other, counting, hand, size, layout, eachRound);
    }

    /** Counted the other way. */
    public WordingChoice withCounting(Counting other) {
        return new WordingChoice(terms, other, hand, size, layout, eachRound);
    }

    /** For makers of the other hand. */
    public WordingChoice withHand(HookHand other) {
        return new WordingChoice(terms, counting, other, size, layout, eachRound);
    }

    /** For a piece on which the repeat is worked that often. */
    public WordingChoice withRepeats(PerSide<Integer> perSide) {
        return withSize(new PatternSize.OfRepeats(perSide));
    }

    /** For other pieces. */
    public WordingChoice withSize(PatternSize other) {
        return new WordingChoice(terms, counting, hand, other, layout, eachRound);
    }

    /** With the rounds laid out otherwise. */
    public WordingChoice withLayout(RoundsLayout other) {
        return new WordingChoice(terms, counting, hand, size, other, eachRound);
    }
}
