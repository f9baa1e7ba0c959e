package edgewright.booklet;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the person who publishes a pattern chooses.
 *
 * @param counting which way of counting is shown first in the table of counts
 * @param repeats how often the repeat is worked on each side; empty for a pattern of any size, whose counts are then given
 *     for a few example sizes
 * @param cellMm the side of a cell of the chart; empty lets the chart fill as few sheets as it can. Not under {@link
 *     #SMALLEST_CELL_MM}: on smaller cells the marks cannot be told apart in print
 * @param draft whether a chart with error findings is published all the same, marked as a draft on every page
 * @param supplements which parts that not every maker needs are printed too
 */
public record BookletOptions(
        Paper paper,
        Terms terms,
        Counting counting,
        Optional<PerSide> repeats,
        OptionalDouble cellMm,
        boolean draft,
        Supplements supplements) {
    /** The smallest cell that is printed. */
    public static final double SMALLEST_CELL_MM = 4;

    /** The largest cell that is printed. */
    public static final double LARGEST_CELL_MM = 20;

    /** @throws IllegalArgumentException if the cell is smaller or larger than what is printed */
    public BookletOptions {
        Objects.requireNonNull(paper);
        Objects.requireNonNull(terms);
        Objects.requireNonNull(counting);
        Objects.requireNonNull(supplements);
        if (cellMm.isPresent()
                && !(cellMm.getAsDouble() >= SMALLEST_CELL_MM && cellMm.getAsDouble() <= LARGEST_CELL_MM)) {
            throw new IllegalArgumentException("a cell of " + cellMm.getAsDouble() + " mm: expected " + SMALLEST_CELL_MM
                    + " to " + LARGEST_CELL_MM);
        }
    }

    /** With all supplements. */
    public BookletOptions(
            Paper paper,
            Terms terms,
            Counting counting,
            Optional<PerSide> repeats,
            OptionalDouble cellMm,
            boolean draft) {
        this(paper, terms, counting, repeats, cellMm, draft, Supplements.ALL);
    }

    /** The pattern in the chart's own terms, on A4, for any size, as large as fits. */
    public static BookletOptions of(Chart chart) {
        return new BookletOptions(
                Paper.A4,
                chart.terms(),
                Counting.STITCHES,
                Optional.empty(),
                OptionalDouble.empty(),
                false,
                Supplements.ALL);
    }

    /** On other paper. */
    public BookletOptions withPaper(Paper other) {
        return new BookletOptions(other, terms, counting, repeats, cellMm, draft, supplements);
    }

    /** In other terms. */
    public BookletOptions withTerms(Terms other) {
        return new BookletOptions(paper, other, counting, repeats, cellMm, draft, supplements);
    }

    /** Counted the other way. */
    public BookletOptions withCounting(Counting other) {
        return new BookletOptions(paper, terms, other, repeats, cellMm, draft, supplements);
    }

    /** For a piece on which the repeat is worked that often. */
    public BookletOptions withRepeats(PerSide perSide) {
        return new BookletOptions(paper, terms, counting, Optional.of(perSide), cellMm, draft, supplements);
    }

    /** With cells of that size. */
    public BookletOptions withCellMm(double side) {
        return new BookletOptions(paper, terms, counting, repeats, OptionalDouble.of(side), draft, supplements);
    }

    /** Published even with error findings, or not. */
    public BookletOptions withDraft(boolean allowed) {
        return new BookletOptions(paper, terms, counting, repeats, cellMm, allowed, supplements);
    }

    /** With these supplements and no others. */
    public BookletOptions withSupplements(Supplements other) {
        return new BookletOptions(paper, terms, counting, repeats, cellMm, draft, other);
    }
}
