package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.check.Checker;
import edgewright.check.Verdict;
import edgewright.fit.FitQuestion;
import edgewright.fit.PatternSize;
import edgewright.fit.Ties;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** One piece: what was counted on its sides, and what is wanted of it. Where nothing was counted, a size or nothing. */
final class PieceOption {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @ArgGroup(exclusive = false)
    private Counted counted;

    @ArgGroup(exclusive = true)
    private Wish wish = new Wish();

    /** What was counted, and in which round; neither is of use without the other. */
    static final class Counted {
        @Option(names = "--at-round", descriptionKey = "at-round", paramLabel = "R", required = true)
        private int round;

        @Option(
                names = "--counts",
                descriptionKey = "counts",
                paramLabel = "N,N,N,N",
                required = true,
                converter = PerSideConverter.class)
        private PerSide<Integer> counts;
    }

    /** What is wanted other than the least change with opposite sides equal; one at a time. */
    static final class Wish extends SizeOption.Size {
        @Option(names = "--any-size", descriptionKey = "any-size")
        private boolean any;

        @Option(names = "--untie", descriptionKey = "untie", paramLabel = "SIDES")
        private Untied untied;

        @Option(
                names = "--target",
                descriptionKey = "target",
                paramLabel = "N,N,N,N",
                converter = PerSideConverter.class)
        private PerSide<Integer> target;
    }

    /** Which opposite sides may come out with different counts. */
    enum Untied {
        TOP_BOTTOM,
        LEFT_RIGHT,
        BOTH;

        /** What is still tied. */
        private Ties rest() {
            return switch (this) {
                case TOP_BOTTOM -> Ties.OPPOSITE.without(Side.TOP);
                case LEFT_RIGHT -> Ties.OPPOSITE.without(Side.LEFT);
                case BOTH -> Ties.NONE;
            };
        }
    }

    private Messages says() {
        return ((RootCommand) command.root().userObject()).terminal().says();
    }

    /** Whether a piece was counted. */
    boolean isCounted() {
        if (counted == null && (wish.untied != null || wish.target != null)) {
            throw new ParameterException(command.commandLine(), says().text("piece-counted"));
        }
        if (counted != null && wish.any) {
            throw new ParameterException(command.commandLine(), says().text("piece-anySize"));
        }
        return counted != null;
    }

    /** Whether the counts that are wanted were stated. */
    boolean isSized() {
        return wish.target != null || wish.isStated();
    }

    /** The round in which the piece was counted. */
    int round() {
        return counted.round;
    }

    /** What was counted, as it was stated. */
    PerSide<Integer> counts() {
        return counted.counts;
    }

    /** The stitches of each side of the base round as they were stated; empty if they were not, or in repeats. */
    Optional<PerSide<Integer>> sides() {
        return Optional.ofNullable(wish.sides());
    }

    /**
     * The size that was stated where no piece was counted, else the sizes that the chart names; any where neither is, where any was
     * asked for, and for sides that do not all close.
     */
    PatternSize size(Chart chart) {
        if (isCounted() || wish.any) {
            return PatternSize.any();
        }
        return wish.isStated() ? PatternSize.of(wish.repeats(chart)) : PatternSize.named(chart);
    }

    /** Judges the chart, for the size that was stated where no piece was counted. */
    Verdict check(Chart chart) {
        return isCounted() ? Checker.check(chart) : wish.check(chart);
    }

    /** What is asked about the piece that was counted. */
    FitQuestion question(Path file, Chart chart, Counting counting) {
        int last = chart.rounds().size();
        if (counted.round < 0 || counted.round > last) {
            throw new BadInput(says().text(
                            "fit-round",
                            arg("file", ScreenText.name(file)),
                            number("round", counted.round),
                            number("last", last)));
        }
        return question(counted.round, chart, counting);
    }

    /** The same, with the counts of another round, one of the chart's. */
    FitQuestion question(int round, Chart chart, Counting counting) {
        requireChains(counted.counts, counting, "--counts");
        FitQuestion question = FitQuestion.of(round, counted.counts, counting);
        if (wish.target != null) {
            requireChains(wish.target, counting, "--target");
            return question.wanting(wish.target);
        }
        return wish.baseStitches(chart)
                .map(base -> question.wanting(base.map(stitches -> counting.shown(stitches + SideShape.growth(round)))))
                .orElseGet(() -> wish.untied == null ? question : question.with(wish.untied.rest()));
    }

    /** Where a chain is counted at each end, a side has those two at the least. */
    private void requireChains(PerSide<Integer> stated, Counting counting, String option) {
        stated.stream().filter(count -> count < counting.shown(0)).findFirst().ifPresent(count -> {
            throw new BadInput(says().text("fit-counts", arg("option", option), count("found", count)));
        });
    }
}
