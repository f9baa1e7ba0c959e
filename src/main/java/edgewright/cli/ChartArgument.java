package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.check.Verdict;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The one chart that a command makes something of, the size it is for, and whether a draft will do. */
final class ChartArgument {
    @Parameters(paramLabel = "CHART", descriptionKey = "CHART", converter = PathConverter.class)
    private Path file;

    @Mixin
    private SizeOption size;

    @Option(names = "--draft")
    private boolean draft;

    /** A chart that something may be made of. */
    record Judged(Path file, Chart chart, Verdict verdict, Optional<PerSide> repeats) {
        /** Whether what is made of it is marked as a draft. */
        boolean isDraft() {
            return verdict.hasErrors();
        }
    }

    /**
     * The chart, if it has no errors or a draft will do. If not, its findings are printed, on standard error since they are not
     * what was asked for, and the command ends with {@link ExitStatus#NO}.
     */
    Optional<Judged> judged(Terminal terminal) {
        Chart chart = ChartInput.read(file);
        Verdict verdict = size.check(chart);
        FindingsText text = new FindingsText(terminal.err(), false);
        if (verdict.hasErrors() && !draft) {
            text.printFirst(file, verdict);
            return Optional.empty();
        }
        if (verdict.hasErrors()) {
            text.printSummary(file, verdict);
        }
        return Optional.of(new Judged(file, chart, verdict, size.repeats(chart)));
    }
}
