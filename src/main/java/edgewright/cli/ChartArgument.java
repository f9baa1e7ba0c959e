package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.check.Verdict;
import edgewright.fit.Fit;
import edgewright.fit.FitAnswer;
import edgewright.fit.FitPlan;
import edgewright.fit.FitSentences;
import edgewright.fit.PatternSize;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The one chart that a command makes something of, and whether a draft will do. */
final class ChartArgument {
    @Parameters(paramLabel = "CHART", descriptionKey = "CHART", converter = PathConverter.class)
    private Path file;

    @Option(names = "--draft")
    private boolean draft;

    /** A chart that something may be made of, and for which pieces. */
    record Judged(Path file, Chart chart, Verdict verdict, PatternSize size) {
        /** Whether what is made of it is marked as a draft. */
        boolean isDraft() {
            return verdict.hasErrors();
        }

        /** How often the repeat is worked on each side; empty for every size. */
        Optional<PerSide<Integer>> repeats() {
            return size.repeats();
        }
    }

    /**
     * The chart, if it has no errors or a draft will do. If not, its findings are printed, on standard error since they are not
     * what was asked for, and the command ends with {@link ExitStatus#NO}.
     */
    Optional<Judged> judged(SizeOption size, Terminal terminal) {
        Chart chart = ChartInput.read(file, terminal);
        Verdict verdict = size.check(chart);
        return mayGoOn(verdict, terminal)
                ? Optional.of(new Judged(file, chart, verdict, size.size(chart)))
                : Optional.empty();
    }

    /**
     * The same for a pattern that may be for one piece. If there are no words for that piece, it is likewise said why.
     *
     * @param counting how the piece was counted
     */
    Optional<Judged> judged(PieceOption piece, Counting counting, Terminal terminal) {
        Chart chart = ChartInput.read(file, terminal);
        Verdict verdict = piece.check(chart);
        if (!mayGoOn(verdict, terminal)) {
            return Optional.empty();
        }
        if (!piece.isCounted()) {
            return Optional.of(new Judged(file, chart, verdict, piece.size(chart)));
        }
        if (!verdict.judged()) {
            FindingsText.onErr(terminal).printFirst(file, verdict);
            return Optional.empty();
        }
        return plan(file, chart, piece, counting, terminal)
                .map(plan -> new Judged(file, chart, verdict, new PatternSize.OfPiece(plan)));
    }

    /**
     * How the piece that was counted is put right in words, and warnings about it on standard error. If it cannot be, only
     * why.
     */
    static Optional<FitPlan> plan(Path file, Chart chart, PieceOption piece, Counting counting, Terminal terminal) {
        FitAnswer answer = Fit.inWords(chart, piece.question(file, chart, counting));
        FitSentences sentences = new FitSentences(terminal.language());
        if (answer instanceof FitPlan plan) {
            plan.warnings().stream()
                    .map(warning -> sentences.of(warning, plan.question()))
                    .forEach(terminal::complain);
            return Optional.of(plan);
        }
        sentences.of(answer).forEach(terminal::complain);
        return Optional.empty();
    }

    private boolean mayGoOn(Verdict verdict, Terminal terminal) {
        FindingsText text = FindingsText.onErr(terminal);
        if (verdict.hasErrors() && !draft) {
            text.printFirst(file, verdict);
            return false;
        }
        if (verdict.hasErrors()) {
            text.printSummary(file, verdict);
        }
        return true;
    }
}
