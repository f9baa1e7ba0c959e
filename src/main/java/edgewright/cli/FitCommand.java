package edgewright.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.check.Checker;
import edgewright.check.Verdict;
import edgewright.fit.BackLayer;
import edgewright.fit.BackSentences;
import edgewright.fit.Fit;
import edgewright.fit.FitAnswer;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.fit.FitRefusal;
import edgewright.fit.FitSentences;
import edgewright.fit.Targets;
import edgewright.fit.Ties;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code fit}: which counts a border closes on, and where a piece is changed to have them. */
@Command(name = "fit", resourceBundle = "edgewright.cli.usage", mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {
    @ParentCommand
    private Root root;

    @Parameters(paramLabel = "CHART", descriptionKey = "CHART", converter = PathConverter.class)
    private Path file;

    @Option(names = "--at-round", paramLabel = "R", required = true)
    private int round;

    @Option(names = "--counts", paramLabel = "N,N,N,N", required = true, converter = PerSideConverter.class)
    private PerSide counts;

    @Option(
            names = "--counting",
            paramLabel = "stitches|with-chains",
            defaultValue = "stitches",
            converter = ChoiceConverter.OfCounting.class)
    private Counting counting;

    @Option(
            names = "--layer",
            paramLabel = "front|back",
            defaultValue = "front",
            converter = ChoiceConverter.OfLayerCounted.class)
    private LayerCounted layer;

    @ArgGroup(exclusive = true)
    private Wish wish = new Wish();

    @Option(names = "--json")
    private boolean json;

    /** What the maker wants other than the least change with opposite sides equal; one at a time. */
    static final class Wish {
        @Option(names = "--untie", paramLabel = "SIDES", converter = ChoiceConverter.OfUntied.class)
        private Untied untied;

        @Option(names = "--target", paramLabel = "N,N,N,N", converter = PerSideConverter.class)
        private PerSide target;

        @Option(names = "--repeats", paramLabel = "N,N,N,N", converter = PerSideConverter.class)
        private PerSide repeats;
    }

    /** Of which layer the round was counted. */
    enum LayerCounted {
        FRONT,
        BACK
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

    /** The JSON document. Why the border does not fit, and warnings, are there only if there are any. */
    private record Fitted(
            int round,
            String counting,
            List<FittedSide> sides,
            List<NextSizes> next,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> warnings,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> problems) {}

    /** Target and change are null where no counts close. */
    private record FittedSide(String side, int actual, Integer target, Integer change, List<Integer> places) {}

    /** Smaller is null where no repeat is left to leave out. */
    private record NextSizes(String side, Integer smaller, int larger) {}

    @Override
    public Integer call() {
        Chart chart = ChartInput.read(file);
        Verdict verdict = Checker.check(chart);
        FindingsText findings = new FindingsText(root.terminal().err(), false);
        if (!verdict.judged()) {
            findings.printFirst(file, verdict);
            return ExitStatus.NO;
        }
        FitAnswer answer = Fit.answer(chart, question(chart));
        if (verdict.hasErrors()) {
            findings.printSummary(file, verdict);
        }
        List<String> sentences = layer == LayerCounted.BACK
                ? new BackSentences(back(chart), round).of(answer)
                : new FitSentences().of(answer);
        if (json) {
            JsonAnswer.print(document(chart, answer, sentences), root.terminal().out());
        } else {
            sentences.forEach(root.terminal().out()::println);
        }
        return answer instanceof FitPlan ? ExitStatus.DONE : ExitStatus.NO;
    }

    private FitQuestion question(Chart chart) {
        int counted = frontRound(chart);
        requireChains(counts, "--counts");
        FitQuestion question = FitQuestion.of(counted, counts, counting);
        if (wish.target != null) {
            requireChains(wish.target, "--target");
            return question.wanting(wish.target);
        }
        if (wish.repeats != null) {
            return question.wanting(
                    wish.repeats.map(m -> counting.shown(chart.shape().stitches(counted, m))));
        }
        return wish.untied == null ? question : question.with(wish.untied.rest());
    }

    /** The round of the front that has the counts of the round that was counted. */
    private int frontRound(Chart chart) {
        if (layer == LayerCounted.BACK) {
            if (chart.making().back().isEmpty()) {
                throw new BadInput(Texts.of("fit.noBack", Texts.name(file)));
            }
            int last = back(chart).rounds().size();
            if (round < 1 || round > last) {
                throw new BadInput(Texts.of("fit.backRound", Texts.name(file), String.valueOf(round), last));
            }
            return back(chart).round(round).frontRound();
        }
        int last = chart.rounds().size();
        if (round < 0 || round > last) {
            throw new BadInput(Texts.of("fit.round", Texts.name(file), String.valueOf(round), last));
        }
        return round;
    }

    private static BackLayer back(Chart chart) {
        return new BackLayer(chart.shape(), chart.rounds().size());
    }

    /** Where a chain is counted at each end, a side has those two at the least. */
    private void requireChains(PerSide stated, String option) {
        stated.stream().filter(count -> count < counting.shown(0)).findFirst().ifPresent(count -> {
            throw new BadInput(Texts.of("fit.counts", count, option));
        });
    }

    private Fitted document(Chart chart, FitAnswer answer, List<String> sentences) {
        Optional<Targets> targets = targets(answer);
        List<FittedSide> sides = Arrays.stream(Side.values())
                .map(side -> fitted(answer, targets, side))
                .toList();
        List<NextSizes> next = targets.stream()
                .flatMap(closing -> Arrays.stream(Side.values()).map(side -> next(closing, side)))
                .toList();
        List<String> warnings = answer instanceof FitPlan plan ? warnings(chart, plan) : List.of();
        String way = counting.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new Fitted(round, way, sides, next, warnings, answer instanceof FitRefusal ? sentences : List.of());
    }

    private List<String> warnings(Chart chart, FitPlan plan) {
        if (layer == LayerCounted.BACK) {
            return new BackSentences(back(chart), round).warnings(plan);
        }
        FitSentences says = new FitSentences();
        return plan.warnings().stream()
                .map(warning -> says.of(warning, plan.question()))
                .toList();
    }

    private static Optional<Targets> targets(FitAnswer answer) {
        if (answer instanceof FitPlan plan) {
            return Optional.of(plan.targets());
        }
        return answer instanceof FitRefusal.NoRoom full ? Optional.of(full.targets()) : Optional.empty();
    }

    private FittedSide fitted(FitAnswer answer, Optional<Targets> targets, Side side) {
        return new FittedSide(
                name(side),
                counts.of(side),
                targets.map(closing -> counting.shown(closing.wanted().of(side)))
                        .orElse(null),
                targets.map(closing -> closing.change(side)).orElse(null),
                answer instanceof FitPlan plan ? plan.change(side).numbers(counting) : List.of());
    }

    private NextSizes next(Targets targets, Side side) {
        OptionalInt smaller = targets.smaller(side);
        return new NextSizes(
                name(side),
                smaller.isPresent() ? counting.shown(smaller.getAsInt()) : null,
                counting.shown(targets.larger(side)));
    }

    private static String name(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }
}
