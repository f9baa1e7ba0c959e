package edgewright.booklet.choice;

import edgewright.draw.marks.MarkStyle;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How a pattern looks on paper.
 *
 * @param paper of everything but, perhaps, the chart
 * @param cellMm the side of a cell of the chart; empty lets the chart fill as few sheets as it can, with cells that suit the
 *     edition. Not under {@link #SMALLEST_CELL_MM}: on smaller cells the marks cannot be told apart in print
 * @param chart which pictures of the chart are printed
 * @param marks how they mark long stitches
 */
public record PrintChoice(
        Edition edition, Paper paper, ChartPaper chartPaper, OptionalDouble cellMm, ChartKind chart, MarkStyle marks) {
    /** The smallest cell that is printed. */
    public static final double SMALLEST_CELL_MM = 4;

    /** The largest cell that is printed. */
    public static final double LARGEST_CELL_MM = 20;

    /** In colour on A4, the chart as large as fits. */
    public static final PrintChoice STANDARD = new PrintChoice(
            Edition.STANDARD, Paper.A4, ChartPaper.SAME, OptionalDouble.empty(), ChartKind.CORNER, MarkStyle.IN_PRINT);

    /** @throws IllegalArgumentException if the cell is smaller or larger than what is printed */
    public PrintChoice {
        Objects.requireNonNull(edition);
        Objects.requireNonNull(paper);
        Objects.requireNonNull(chartPaper);
        Objects.requireNonNull(chart);
        Objects.requireNonNull(marks);
        if (cellMm.isPresent()
                && !(cellMm.getAsDouble() >= SMALLEST_CELL_MM && cellMm.getAsDouble() <= LARGEST_CELL_MM)) {
            throw new IllegalArgumentException("a cell of " + cellMm.getAsDouble() + " mm: expected " + SMALLEST_CELL_MM
                    + " to " + LARGEST_CELL_MM);
        }
    }

    /** In another edition. */
    public PrintChoice withEdition(Edition other) {
        return new PrintChoice(other, paper, chartPaper, cellMm, chart, marks);
    }

    /** On other paper. */
    public PrintChoice withPaper(Paper other) {
        return new PrintChoice(edition, other, chartPaper, cellMm, chart, marks);
    }

    /** With the chart on other paper. */
    public PrintChoice withChartPaper(ChartPaper other) {
        return new PrintChoice(edition, paper, other, cellMm, chart, marks);
    }

    /** With cells of that size. */
    public PrintChoice withCellMm(double side) {
        return new PrintChoice(edition, paper, chartPaper, OptionalDouble.of(side), chart, marks);
    }

    /** With these pictures of the chart. */
    public PrintChoice withChart(ChartKind other) {
        return new PrintChoice(edition, paper, chartPaper, cellMm, other, marks);
    }

    /** With long stitches marked otherwise. */
    public PrintChoice withMarks(MarkStyle other) {
        return new PrintChoice(edition, paper, chartPaper, cellMm, chart, other);
    }
}
