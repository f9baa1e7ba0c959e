package edgewright.booklet;

import edgewright.chart.Counting;
import edgewright.chart.Hand;
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
public record Telling(PrintedTerms terms, Counting counting, Hand hand, PatternSize size) {
    public Telling {
        Objects.requireNonNull(terms);
        Objects.requireNonNull(counting);
        Objects.requireNonNull(hand);
        Objects.requireNonNull(size);
    }

    /** In other terms. */
    public Telling withTerms(PrintedTerms other) {
        return new Telling(other, counting, hand, size);
    }

    /** Counted the other way. */
    public Telling withCounting(Counting other) {
        return new Telling(terms, other, hand, size);
    }

    /** For makers of the other hand. */
    public Telling withHand(Hand other) {
        return new Telling(terms, counting, other, size);
    }

    /** For a piece on which the repeat is worked that often. */
    public Telling withRepeats(PerSide perSide) {
        return withSize(new PatternSize.OfRepeats(perSide));
    }

    /** For other pieces. */
    public Telling withSize(PatternSize other) {
        return new Telling(terms, counting, hand, other);
    }
}
