package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;

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
import edgewright.fit.FitWarning;
import edgewright.fit.Targets;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code fit}: which counts a border closes on, and where a piece is changed to have them. */
@Command(name = "fit", mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {
    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CHART", descriptionKey = "CHART", converter = PathConverter.class)
    private Path file;

    @Mixin
    private PieceOption piece;

    @Option(names = "--counting", paramLabel = "stitches|with-chains", defaultValue = "stitches")
    private Counting counting;

    @Option(names = "--layer", paramLabel = "front|back", defaultValue = "front")
    private LayerCounted layer;

    @ArgGroup(exclusive = false)
    private Front front;

    /** What was counted on the front of a double border, and in which round; neither is of use without the other. */
    static final class Front {
        @Option(names = "--front-round", descriptionKey = "front-round", paramLabel = "R", required = true)
        private int round;

        @Option(
                names = "--front-counts",
                descriptionKey = "front-counts",
                paramLabel = "N,N,N,N",
                required = true,
                converter = PerSideConverter.class)
        private PerSide<Integer> counts;
    }

    @Option(names = "--json")
    private boolean json;

    /** Of which layer the round was counted. */
    enum LayerCounted {
        FRONT,
        BACK
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
        if (!piece.isCounted()) {
            throw new ParameterException(spec.commandLine(), says().text("fit-counted"));
        }
        Chart chart = ChartInput.read(file, root.terminal());
        Verdict verdict = Checker.check(chart);
        FindingsText findings = FindingsText.onErr(root.terminal());
        if (!verdict.judged()) {
            findings.printFirst(file, verdict);
            return ExitStatus.NO;
        }
        FitAnswer answer = Fit.answer(chart, question(chart));
        if (verdict.hasErrors()) {
            findings.printSummary(file, verdict);
        }
        List<String> sentences = layer == LayerCounted.BACK
                ? new BackSentences(root.terminal().language(), back(chart), piece.round()).of(answer)
                : new FitSentences(root.terminal().language()).of(answer);
        if (json) {
            JsonAnswer.print(document(chart, answer, sentences), root.terminal().out());
        } else {
            sentences.forEach(root.terminal()::say);
        }
        return answer instanceof FitPlan plan && objections(plan).isEmpty() ? ExitStatus.DONE : ExitStatus.NO;
    }

    private FitQuestion question(Chart chart) {
        if (layer == LayerCounted.FRONT) {
            if (front != null) {
                throw new ParameterException(spec.commandLine(), says().text("fit-frontOnly"));
            }
            return piece.question(file, chart, counting);
        }
        int round = frontRound(chart);
        if (front == null && !piece.isSized()) {
            throw new ParameterException(spec.commandLine(), says().text("fit-front"));
        }
        if (front == null) {
            return piece.question(round, chart, counting);
        }
        if (piece.isSized()) {
            throw new ParameterException(spec.commandLine(), says().text("fit-frontOrSize"));
        }
        return back(chart)
                .question(piece.round(), piece.question(round, chart, counting).counts(), counting, repeats(chart));
    }

    /** How often the repeat is worked on the front that was counted. */
    private PerSide<Integer> repeats(Chart chart) {
        int last = chart.rounds().size();
        if (front.round < 0 || front.round > last) {
            throw new BadInput(says().text(
                            "fit-round",
                            arg("file", ScreenText.name(file)),
                            number("round", front.round),
                            number("last", last)));
        }
        return back(chart)
                .repeats(front.round, front.counts, counting)
                .orElseThrow(() -> new BadInput(says().text(
                                "fit-frontOpen", arg("file", ScreenText.name(file)), number("round", front.round))));
    }

    /** The round of the front that has the counts of the round of the back that was counted. */
    private int frontRound(Chart chart) {
        if (chart.making().back().isEmpty()) {
            throw new BadInput(says().text("fit-noBack", arg("file", ScreenText.name(file))));
        }
        int last = back(chart).rounds().size();
        if (piece.round() < 1 || piece.round() > last) {
            throw new BadInput(says().text(
                            "fit-backRound",
                            arg("file", ScreenText.name(file)),
                            number("round", piece.round()),
                            number("last", last)));
        }
        return back(chart).round(piece.round()).frontRound();
    }

    private static BackLayer back(Chart chart) {
        return new BackLayer(chart.border(), chart.rounds().size());
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
        List<String> problems = answer instanceof FitPlan plan ? said(plan, objections(plan)) : sentences;
        return new Fitted(piece.round(), way, sides, next, warnings, problems);
    }

    /** What stands against a plan. The long stitches of the front are none of the back layer's business. */
    private List<FitWarning> objections(FitPlan plan) {
        return layer == LayerCounted.BACK ? List.of() : plan.objections();
    }

    private List<String> warnings(Chart chart, FitPlan plan) {
        if (layer == LayerCounted.BACK) {
            return new BackSentences(root.terminal().language(), back(chart), piece.round()).warnings(plan);
        }
        return said(
                plan,
                plan.warnings().stream()
                        .filter(warning -> !warning.isObjection())
                        .toList());
    }

    private List<String> said(FitPlan plan, List<FitWarning> warnings) {
        FitSentences sentences = new FitSentences(root.terminal().language());
        return warnings.stream()
                .map(warning -> sentences.of(warning, plan.question()))
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
                piece.counts().get(side),
                targets.map(closing -> counting.shown(closing.wanted().get(side)))
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

    private Messages says() {
        return root.terminal().says();
    }
}
