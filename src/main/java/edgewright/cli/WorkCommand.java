package edgewright.cli;

import static edgewright.texts.Arg.and;
import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import com.fasterxml.jackson.annotation.JsonInclude;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.file.ChartFiles;
import edgewright.file.FileProblemException;
import edgewright.file.TextFile;
import edgewright.file.fault.ProblemSentences;
import edgewright.fit.FitPlan;
import edgewright.fit.PatternSize;
import edgewright.hands.BackFabric;
import edgewright.hands.Fabric;
import edgewright.proof.ChartFromWords;
import edgewright.proof.ChartFromWords.Answer;
import edgewright.proof.ProofResult;
import edgewright.proof.ProofSentences;
import edgewright.proof.Prover;
import edgewright.proof.TextReading;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.PlainText;
import edgewright.words.tree.Instructions;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code work}: works the words stitch by stitch, and holds what comes off the hook to the chart. */
@Command(name = "work", mixinStandardHelpOptions = true)
final class WorkCommand implements Callable<Integer> {
    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CHART", descriptionKey = "workChart", arity = "0..1", converter = PathConverter.class)
    private Path file;

    @Mixin
    private PieceOption piece;

    @Option(
            names = "--counting",
            descriptionKey = "counting",
            paramLabel = "stitches|with-chains",
            defaultValue = "stitches")
    private Counting counting;

    @Option(names = "--terms", paramLabel = "UK|US")
    private Terms terms;

    @Option(names = "--hand", paramLabel = "right|left", defaultValue = "right")
    private HookHand hand;

    @Option(names = "--from", paramLabel = "TEXTFILE", converter = PathConverter.class)
    private Path from;

    @Option(names = "--to", paramLabel = "CHART", converter = PathConverter.class)
    private Path to;

    @Option(names = "--explain")
    private boolean explain;

    @Option(names = "--json")
    private boolean json;

    /** What came of words that can be worked. */
    private enum Done {
        /** They make the chart. */
        AGREES,
        /** They put the counts of a piece right and make the chart from there on. */
        FITS,
        /** There is no chart to compare with. */
        ALONE
    }

    /** The JSON document. What stands against the words is there only if they do not agree. */
    private record Worked(
            boolean agrees,
            List<WorkedRound> rounds,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) List<BackRound> back,
            @JsonInclude(JsonInclude.Include.NON_DEFAULT) int joins,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> problems) {}

    /** A round of a back layer, with the stitches on each side. */
    private record BackRound(int round, List<Integer> sides, long total) {}

    private record WorkedRound(int round, String yarn, List<String> sides, long total) {}

    @Override
    public Integer call() {
        if (explain) {
            return explainText();
        }
        if (file == null) {
            return workWithoutChart();
        }
        if (to != null) {
            throw usage(says().text("work-toWithChart"));
        }
        Chart chart = ChartInput.read(file, root.terminal());
        if (!FindingsText.onErr(root.terminal()).isSound(file, piece.check(chart))) {
            return ExitStatus.NO;
        }
        if (piece.isCounted()) {
            Optional<FitPlan> plan = ChartArgument.plan(file, chart, piece, counting, root.terminal());
            return plan.map(counted -> workPiece(chart, counted)).orElse(ExitStatus.NO);
        }
        return workSizes(chart, piece.size(chart));
    }

    /** Works the words in the size that was stated, or in every size that the chart names. */
    private int workSizes(Chart chart, PatternSize size) {
        List<PerSide<Integer>> sizes = size.sizes();
        if (sizes.isEmpty()) {
            throw usage(says().text("work-size"));
        }
        String words = words(chart, size);
        Prover prover = new Prover(chart, language());
        int status = ExitStatus.DONE;
        for (int i = 0; i < sizes.size(); i++) {
            PerSide<Integer> repeats = sizes.get(i);
            PerSide<Integer> base = chart.border().stitches(0, repeats);
            Optional<TextReading> typed = Optional.ofNullable(from).map(file -> reading(words, Optional.of(base)));
            List<String> findings = typed.map(this::findings).orElse(List.of());
            ProofResult result = typed.map(reading -> prover.prove(pattern(reading), repeats))
                    .orElseGet(() -> prover.prove(words, repeats));
            // One document is one answer: of the first size that does not agree, else of the last.
            if (!json || i == sizes.size() - 1 || !result.agrees() || !findings.isEmpty()) {
                status = Math.max(status, answer(result, Done.AGREES, base, findings));
            }
            if (json && status != ExitStatus.DONE) {
                break;
            }
        }
        return status;
    }

    /** A text as it is understood. */
    private TextReading reading(String typed, Optional<PerSide<Integer>> base) {
        return TextReading.of(typed, language(), Optional.ofNullable(terms), base);
    }

    private Instructions pattern(TextReading reading) {
        return reading.pattern().orElseThrow(() -> unread(reading.sentences(language())));
    }

    /** What is stated in the words and does not come out. */
    private List<String> findings(TextReading reading) {
        return reading.sentences(language()).stream()
                .map(finding -> says().text("work-finding", arg("finding", finding)))
                .toList();
    }

    /** Prints the words of the file as they are understood. */
    private int explainText() {
        if (from == null) {
            throw usage(says().text("work-explainFrom"));
        }
        String typed = text(from);
        TextReading reading = reading(typed, piece.sides().filter(sides -> !piece.isCounted()));
        new ExplainedText(language(), typed, reading)
                .lines()
                .forEach(line -> root.terminal().out().println(ScreenText.oneLine(line)));
        List<String> problems = reading.sentences(language());
        if (reading.pattern().isEmpty()) {
            throw unread(problems);
        }
        findings(reading).forEach(finding -> root.terminal().say(ScreenText.oneLine(finding)));
        return problems.isEmpty() ? ExitStatus.DONE : ExitStatus.NO;
    }

    /** Works the words for the piece that was counted, from the base round that it has. */
    private int workPiece(Chart chart, FitPlan plan) {
        String words = words(chart, new PatternSize.OfPiece(plan));
        Done done = plan.isDone() ? Done.AGREES : Done.FITS;
        return answer(new Prover(chart, language()).prove(words, plan), done, plan.stitches(0), List.of());
    }

    /** Works words for which there is no chart yet, and draws it if asked. */
    private int workWithoutChart() {
        if (from == null) {
            throw usage(says().text("work-nothing"));
        }
        Optional<PerSide<Integer>> sides = piece.sides().filter(given -> !piece.isCounted());
        TextReading reading = reading(text(from), sides);
        Instructions pattern = pattern(reading);
        PerSide<Integer> base = sides.or(reading::firstSize).orElseThrow(() -> usage(says().text("work-sides")));
        ProofResult result = Prover.work(pattern, base);
        int status = answer(result, Done.ALONE, base, findings(reading));
        return status == ExitStatus.DONE && to != null ? draw((ProofResult.Agrees) result) : status;
    }

    private int draw(ProofResult.Agrees worked) {
        OutputFile output = new OutputFile(to, from, List.of(ChartFiles.ENDING), root.terminal());
        Answer answer = ChartFromWords.of(worked.pattern(), worked.worked());
        if (answer instanceof Answer.NotOneChart not) {
            root.terminal()
                    .complain(
                            switch (not.why()) {
                                case CORNERS_DIFFER ->
                                    says().text("work-cornersDiffer", arg("file", ScreenText.name(from)));
                                case NO_COMMON_REPEAT ->
                                    says().text("work-noCommonRepeat", arg("file", ScreenText.name(from)));
                            });
            return ExitStatus.NO;
        }
        if (answer instanceof Answer.BeyondLimit beyond) {
            throw new BadInput(sentence(beyond));
        }
        output.write(((Answer.Drawn) answer).chart());
        return ExitStatus.DONE;
    }

    private String sentence(Answer.BeyondLimit beyond) {
        String name = ScreenText.name(from);
        return switch (beyond.limit()) {
            case YARN_ID ->
                says().text(
                                "work-longId",
                                arg("file", name),
                                arg("id", beyond.found()),
                                count("most", Yarn.LONGEST_ID));
            case YARNS ->
                says().text(
                                "work-manyYarns",
                                arg("file", name),
                                count("yarns", Long.parseLong(beyond.found())),
                                count("most", Chart.MOST_YARNS));
            case ROUNDS ->
                says().text(
                                "work-manyRounds",
                                arg("file", name),
                                count("rounds", Long.parseLong(beyond.found())),
                                count("most", Chart.MOST_ROUNDS));
            case STITCHES ->
                says().text(
                                "work-wideCorner",
                                arg("file", name),
                                count("stitches", Long.parseLong(beyond.found())),
                                count("most", Chart.MOST_STITCHES));
        };
    }

    private String words(Chart chart, PatternSize size) {
        if (from != null) {
            return text(from);
        }
        WordingOptions options =
                new WordingOptions(language(), terms == null ? chart.terms() : terms, counting, size, false, hand);
        return PlainText.of(PatternWriter.write(chart, options));
    }

    private Language language() {
        return root.terminal().language();
    }

    private String text(Path file) {
        try {
            return TextFile.read(file);
        } catch (FileProblemException e) {
            throw new BadInput(new ProblemSentences(root.terminal().language()).of(file, e.problem()));
        }
    }

    private BadInput unread(List<String> sentences) {
        String source = from == null ? says().text("work-freshWords") : ScreenText.name(from);
        String line =
                says().text("work-unread", arg("source", source), arg("mistake", ScreenText.oneLine(sentences.get(0))));
        return new BadInput(
                sentences.size() == 1
                        ? line
                        : says().text("first-of", arg("line", line), count("problems", sentences.size())));
    }

    /**
     * @param done what is said if all is well; the rounds, the stitches and the base round come into it
     * @param findings what is stated in the words and does not come out
     */
    private int answer(ProofResult result, Done done, PerSide<Integer> base, List<String> findings) {
        ProofSentences says = new ProofSentences(root.terminal().language());
        if (result instanceof ProofResult.Unread unread) {
            throw unread(says.of(unread));
        }
        if (result instanceof ProofResult.TooLarge large) {
            throw new BadInput(says().text(
                            "work-tooLarge", count("stitches", large.stitches()), count("most", Prover.MOST_STITCHES)));
        }
        List<String> problems = new ArrayList<>(findings);
        problems.addAll(says.of(result));
        if (json) {
            JsonAnswer.print(
                    new Worked(
                            result.agrees() && findings.isEmpty(),
                            rounds(result),
                            back(result),
                            layer(result).map(BackFabric::joins).orElse(0),
                            problems),
                    root.terminal().out());
        } else {
            print(result, problems, done, base);
        }
        return result.agrees() && findings.isEmpty() ? ExitStatus.DONE : ExitStatus.NO;
    }

    private void print(ProofResult result, List<String> problems, Done done, PerSide<Integer> base) {
        if (problems.isEmpty()) {
            Fabric fabric = result.fabric().orElseThrow();
            root.terminal()
                    .out()
                    .println(says().text(
                                    "worked-" + done,
                                    count("rounds", fabric.rounds()),
                                    count("stitches", fabric.total()),
                                    and(
                                            "base",
                                            base.stream().map(language()::count).toList())));
            layer(result)
                    .ifPresent(back -> root.terminal()
                            .out()
                            .println(says().text(
                                            "work-back",
                                            count("rounds", back.rounds()),
                                            count("joins", back.joins()))));
        } else {
            problems.forEach(problem -> root.terminal().say(ScreenText.oneLine(problem)));
        }
    }

    private static Optional<BackFabric> layer(ProofResult result) {
        return result.fabric().flatMap(Fabric::back);
    }

    private static List<BackRound> back(ProofResult result) {
        List<BackRound> rounds = new ArrayList<>();
        layer(result).ifPresent(back -> {
            for (int r = 1; r <= back.rounds(); r++) {
                List<Integer> sides = new ArrayList<>();
                for (Side side : Side.values()) {
                    sides.add(back.side(r, side).size());
                }
                rounds.add(new BackRound(
                        r, sides, sides.stream().mapToLong(Integer::longValue).sum()));
            }
        });
        return rounds;
    }

    private static List<WorkedRound> rounds(ProofResult result) {
        Fabric fabric = result.fabric().orElseThrow();
        List<WorkedRound> rounds = new ArrayList<>();
        for (int r = 1; r <= fabric.rounds(); r++) {
            List<String> sides = new ArrayList<>();
            for (Side side : Side.values()) {
                sides.add(fabric.letters(r, side));
            }
            rounds.add(new WorkedRound(r, fabric.yarn(r), sides, fabric.total(r)));
        }
        return rounds;
    }

    private ParameterException usage(String why) {
        return new ParameterException(spec.commandLine(), why);
    }

    private Messages says() {
        return root.terminal().says();
    }
}
