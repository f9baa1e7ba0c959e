package edgewright.words.write;

import edgewright.chart.Chart;
import edgewright.texts.Language;
import edgewright.words.page.PatternText;
import edgewright.words.page.RoundParts;
import edgewright.words.page.TextBlock;
import edgewright.words.said.SaidPattern;
import edgewright.words.said.SpanMarks;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.WrittenRound;
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
    public static Instructions tree(Chart chart, WordingOptions options) {
        Instructions tree = options.size()
                .changes()
                .map(plan -> new FittedRounds(chart, plan).pattern(options))
                .orElseGet(() -> Composer.compose(chart, options));
        boolean apart = options.eachRound() || options.layout() == RoundsLayout.TABLE;
        return apart ? tree : AlikeRounds.referring(tree);
    }

    /** The chart in words, with all that is needed to work it. */
    public static PatternText write(Chart chart, WordingOptions options) {
        return write(chart, options, tree(chart, options), SpanMarks.none());
    }

    /** The chart in the same words, with which piece of the words of its rounds says which stitches. */
    public static SaidPattern said(Chart chart, WordingOptions options) {
        SpanMarks marks = SpanMarks.kept();
        Instructions tree = tree(chart, options);
        return SaidPattern.of(chart, options.repeats(), tree, write(chart, options, tree, marks), marks);
    }

    private static PatternText write(Chart chart, WordingOptions options, Instructions tree, SpanMarks marks) {
        return new Wording(
                        options.language(),
                        tree,
                        new Wording.Extras(
                                new NeedsWording(chart, options).blocks(),
                                options.size().names(),
                                chart.making().technique(),
                                options.layout(),
                                options.eachRound(),
                                options.techniques()),
                        marks)
                .pattern();
    }

    /** A tree in words of this language. */
    public static PatternText write(Instructions pattern, Language language) {
        return write(pattern, language, RoundsLayout.SENTENCES);
    }

    /** A tree in words of this language, its rounds laid out like this. */
    public static PatternText write(Instructions pattern, Language language, RoundsLayout layout) {
        return new Wording(language, pattern, Wording.Extras.none(layout), SpanMarks.none()).pattern();
    }

    /**
     * The words of one round by itself, as they stand in a pattern that tells each round in full.
     *
     * @param round 1 to the rounds of the chart
     */
    public static TextBlock.RoundWords round(Chart chart, int round, WordingOptions options) {
        return new Wording(options.language(), frame(chart, options)).rounds(List.of(written(chart, round, options)));
    }

    /**
     * The words of one round, taken apart.
     *
     * @param round 1 to the rounds of the chart
     */
    public static RoundParts parts(Chart chart, int round, WordingOptions options) {
        return new Wording(options.language(), frame(chart, options)).parts(written(chart, round, options));
    }

    private static Instructions frame(Chart chart, WordingOptions options) {
        Instructions frame = Composer.frame(chart, options);
        return options.size()
                .changes()
                .map(plan -> new FittedRounds(chart, plan).frame(frame))
                .orElse(frame);
    }

    private static WrittenRound written(Chart chart, int round, WordingOptions options) {
        return options.size()
                .changes()
                .map(plan -> new FittedRounds(chart, plan).round(round, options))
                .orElseGet(() -> Composer.round(chart, round, options));
    }
}
