package edgewright.booklet;

import edgewright.chart.Counting;
import edgewright.chart.Hand;
import edgewright.chart.PerSide;
import java.util.Objects;
import java.util.Optional;

/**
 * In which words, and to whom, a pattern is told.
 *
 * @param counting which way of counting is shown first in the table of counts
 * @param hand the hand that holds the hook
 * @param repeats how often the repeat is worked on each side; empty for a pattern of any size, whose counts are then given
 *     for a few example sizes
 */
public record Telling(PrintedTerms terms, Counting counting, Hand hand, Optional<PerSide> repeats) {
    public Telling {
        Objects.requireNonNull(terms);
        Objects.requireNonNull(counting);
        Objects.requireNonNull(hand);
        Objects.requireNonNull(repeats);
    }

    /** In other terms. */
    public Telling withTerms(PrintedTerms other) {
        return new Telling(other, counting, hand, repeats);
    }

    /** Counted the other way. */
    public Telling withCounting(Counting other) {
        return new Telling(terms, other, hand, repeats);
    }

    /** For makers of the other hand. */
    public Telling withHand(Hand other) {
        return new Telling(terms, counting, other, repeats);
    }

    /** For a piece on which the repeat is worked that often. */
    public Telling withRepeats(PerSide perSide) {
        return new Telling(terms, counting, hand, Optional.of(perSide));
    }
}
