package edgewright.words;

import edgewright.chart.Chart;
import java.util.List;

/** Writes a chart down in the conventions of the trade. */
public final class PatternWriter {
    /** How often the repeat is worked in the sizes that stand as examples beside a multiple; rising. */
    public static List<Integer> exampleRepeats() {
        return Composer.EXAMPLES;
    }

    private PatternWriter() {}

    /**
     * The chart as a tree of instructions.
     *
     * @param options if they are for one piece, for one of which this chart can be written; see {@link
     *     edgewright.fit.Fit#inWords}
     */
    public static Pattern tree(Chart chart, Options options) {
        return options.size()
                .changes()
                .map(plan -> new FittedRounds(chart, plan).pattern(options))
                .orElseGet(() -> Composer.compose(chart, options));
    }

    /** The chart in words, with the hook and the tension where the chart names them. */
    public static WrittenPattern write(Chart chart, Options options) {
        return new Wording(tree(chart, options), new ToolsWording(options.terms()).entries(chart)).pattern();
    }

    /** A tree in words. */
    public static WrittenPattern write(Pattern pattern) {
        return new Wording(pattern).pattern();
    }

    /**
     * The words of one round, as they stand in the pattern.
     *
     * @param round 1 to the rounds of the chart
     */
    public static Block.RoundWords round(Chart chart, int round, Options options) {
        return new Wording(Composer.frame(chart, options)).round(written(chart, round, options));
    }

    /**
     * The words of one round, taken apart.
     *
     * @param round 1 to the rounds of the chart
     */
    public static RoundParts parts(Chart chart, int round, Options options) {
        return new Wording(Composer.frame(chart, options)).parts(written(chart, round, options));
    }

    private static WrittenRound written(Chart chart, int round, Options options) {
        return options.size()
                .changes()
                .map(plan -> new FittedRounds(chart, plan).round(round, options))
                .orElseGet(() -> Composer.round(chart, round, options));
    }
}
