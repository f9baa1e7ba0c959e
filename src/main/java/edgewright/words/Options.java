package edgewright.words;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Hand;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.fit.FitPlan;
import edgewright.fit.PatternSize;
import java.util.Objects;
import java.util.Optional;

/**
 * How a chart is to be written down.
 *
 * @param counting the way of counting that is named first, and the only one for the counts of a given size
 * @param size for which pieces the pattern is
 * @param draft whether the pattern says that it is a draft
 * @param hand whose pattern it is
 */
public record Options(Terms terms, Counting counting, PatternSize size, boolean draft, Hand hand) {
    public Options {
        Objects.requireNonNull(terms);
        Objects.requireNonNull(counting);
        Objects.requireNonNull(size);
        Objects.requireNonNull(hand);
    }

    /** A pattern for a size, or for every size. */
    public Options(Terms terms, Counting counting, Optional<PerSide> repeats, boolean draft, Hand hand) {
        this(terms, counting, PatternSize.of(repeats), draft, hand);
    }

    /** A pattern for the right hand. */
    public Options(Terms terms, Counting counting, Optional<PerSide> repeats, boolean draft) {
        this(terms, counting, repeats, draft, Hand.RIGHT);
    }

    /** A finished pattern for the right hand. */
    public Options(Terms terms, Counting counting, Optional<PerSide> repeats) {
        this(terms, counting, repeats, false);
    }

    /** The chart's own terms, stitches only, every size. */
    public static Options of(Chart chart) {
        return new Options(chart.terms(), Counting.STITCHES, Optional.empty());
    }

    /** How often the repeat is worked on each side; empty for a pattern for every size. */
    public Optional<PerSide> repeats() {
        return size.repeats();
    }

    /** These options in other terms. */
    public Options withTerms(Terms other) {
        return new Options(other, counting, size, draft, hand);
    }

    /** These options with another way of counting. */
    public Options withCounting(Counting other) {
        return new Options(terms, other, size, draft, hand);
    }

    /** These options for one size. */
    public Options withRepeats(PerSide times) {
        return new Options(terms, counting, Optional.of(times), draft, hand);
    }

    /** These options for one piece whose counts are put right as the plan says. */
    public Options withPiece(FitPlan plan) {
        return new Options(terms, counting, new PatternSize.OfPiece(plan), draft, hand);
    }

    /** These options for a draft. */
    public Options asDraft() {
        return new Options(terms, counting, size, true, hand);
    }

    /** These options for every size. */
    public Options withoutRepeats() {
        return new Options(terms, counting, PatternSize.any(), draft, hand);
    }

    /** These options for a maker with this hand. */
    public Options withHand(Hand other) {
        return new Options(terms, counting, size, draft, other);
    }
}
