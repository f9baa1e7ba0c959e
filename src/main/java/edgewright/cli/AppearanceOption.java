package edgewright.cli;

import edgewright.booklet.Appearance;
import edgewright.booklet.ChartPaper;
import edgewright.booklet.Edition;
import edgewright.booklet.Paper;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** How a printed pattern looks. */
final class AppearanceOption {
    @Option(
            names = "--edition",
            paramLabel = "EDITION",
            defaultValue = "standard",
            converter = ChoiceConverter.OfEdition.class)
    private Edition edition;

    @Option(names = "--paper", paramLabel = "PAPER", defaultValue = "a4", converter = ChoiceConverter.OfPaper.class)
    private Paper paper;

    @Option(
            names = "--chart-paper",
            paramLabel = "PAPER",
            defaultValue = "same",
            converter = ChoiceConverter.OfChartPaper.class)
    private ChartPaper chartPaper;

    @Option(names = "--cell-mm", paramLabel = "MM", converter = NumberConverter.OfPrintedCellMm.class)
    private Double cellMm;

    Appearance appearance() {
        return new Appearance(
                edition, paper, chartPaper, cellMm == null ? OptionalDouble.empty() : OptionalDouble.of(cellMm));
    }
}
