package edgewright.cli;

import edgewright.booklet.choice.PrintedTerms;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.words.write.RoundsLayout;
import picocli.CommandLine.Option;

/** In which terms a pattern is written, how its sides are counted, for which hand, and how its rounds are laid out. */
final class WordingOption {
    @Option(names = "--terms", descriptionKey = "terms", paramLabel = "UK|US|both")
    private PrintedTerms terms;

    @Option(
            names = "--counting",
            descriptionKey = "counting",
            paramLabel = "stitches|with-chains",
            defaultValue = "stitches")
    private Counting counting;

    @Option(names = "--hand", descriptionKey = "hand", paramLabel = "right|left", defaultValue = "right")
    private HookHand hand;

    @Option(names = "--layout", descriptionKey = "layout", paramLabel = "sentences|table", defaultValue = "sentences")
    private RoundsLayout layout;

    @Option(names = "--each-round", descriptionKey = "each-round")
    private boolean eachRound;

    /** The terms that were asked for, else those of the chart. */
    PrintedTerms terms(Chart chart) {
        return terms == null ? PrintedTerms.of(chart.terms()) : terms;
    }

    Counting counting() {
        return counting;
    }

    /** How the rounds are laid out. */
    RoundsLayout layout() {
        return layout;
    }

    /** Whether each round is told by itself. */
    boolean eachRound() {
        return eachRound;
    }

    /** The hand that holds the hook. */
    HookHand hand() {
        return hand;
    }
}
