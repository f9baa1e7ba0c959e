package edgewright.cli;

import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintChoice;
import edgewright.draw.marks.MarkStyle;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** How a printed pattern looks. */
final class PrintOption {
    @Option(names = "--edition", paramLabel = "EDITION", defaultValue = "standard")
    private Edition edition;

    @Option(names = "--paper", paramLabel = "PAPER", defaultValue = "a4")
    private Paper paper;

    @Option(names = "--chart-paper", paramLabel = "PAPER", defaultValue = "same")
    private ChartPaper chartPaper;

    @Option(names = "--cell-mm", paramLabel = "MM", converter = NumberConverter.OfPrintedCellMm.class)
    private Double cellMm;

    @Option(names = "--chart", paramLabel = "corner|side|both", defaultValue = "corner")
    private ChartKind chart;

    @Option(names = "--marks", paramLabel = "stems|squares")
    private MarkStyle marks = MarkStyle.IN_PRINT;

    PrintChoice appearance() {
        return new PrintChoice(
                edition,
                paper,
                chartPaper,
                cellMm == null ? OptionalDouble.empty() : OptionalDouble.of(cellMm),
                chart,
                marks);
    }
}
