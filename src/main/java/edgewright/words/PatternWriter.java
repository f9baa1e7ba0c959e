package edgewright.words;

import edgewright.chart.Chart;
import edgewright.fit.FitPlan;

/** Writes a chart down in the conventions of the trade. */
public final class PatternWriter {
    private PatternWriter() {}

    /** The chart as a tree of instructions. */
    public static Pattern tree(Chart chart, Options options) {
        return Composer.compose(chart, options);
    }

    /** The chart in words. */
    public static WrittenPattern write(Chart chart, Options options) {
        return write(tree(chart, options));
    }

    /** A tree in words. */
    public static WrittenPattern write(Pattern pattern) {
        return new Wording(pattern).pattern();
    }

    /**
     * The tree for a piece whose counts are put right on the way. The size in the options is of no account.
     *
     * @param plan for this chart
     * @throws IllegalArgumentException if stitches are to be added or lost in a round with long stitches or chains
     */
    public static Pattern tree(Chart chart, Options options, FitPlan plan) {
        return new FittedRounds(chart, plan).pattern(options);
    }

    /**
     * The words of the round in which the counts of a piece are put right.
     *
     * @param plan for this chart
     * @throws IllegalArgumentException if that round has long stitches or chains
     */
    public static Block.RoundWords changingRound(Chart chart, Options options, FitPlan plan) {
        return new Wording(Composer.frame(chart, options)).round(new FittedRounds(chart, plan).changing(options));
    }

    /**
     * The words of one round, as they stand in the pattern.
     *
     * @param round 1 to the rounds of the chart
     */
    public static Block.RoundWords round(Chart chart, int round, Options options) {
        return new Wording(Composer.frame(chart, options)).round(Composer.round(chart, round, options));
    }

    /**
     * The words of one round, taken apart.
     *
     * @param round 1 to the rounds of the chart
     */
    public static RoundParts parts(Chart chart, int round, Options options) {
        return new Wording(Composer.frame(chart, options)).parts(Composer.round(chart, round, options));
    }
}
