package edgewright.desk.spoken;

import edgewright.chart.BorderGrid;
import edgewright.chart.GridCell;
import edgewright.chart.GridContent.CornerChains;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.draw.picture.CellLayout;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A drawn chart as a table, however it lies on the canvas. Row 0 is round 1, and each row further is a round further out. The
 * columns are those of the fabric in working order, from 0: what is drawn of one side, then of the next, each with the corner at
 * its end and, if no side is drawn before it, the one at its start. Stitches that stand on each other are in one column.
 */
record ChartTable(CellLayout layout, List<Strip> strips) {
    /** Of a side the columns of the fabric that are drawn, both ends included; 0 is before the first of the base round. */
    record Strip(Side side, int first, int last) {
        int columns() {
            return last - first + 1;
        }
    }

    static ChartTable of(CellLayout layout) {
        List<Strip> strips = new ArrayList<>();
        for (Side side : Side.values()) {
            strip(layout, side, strips.isEmpty()).ifPresent(strips::add);
        }
        return new ChartTable(layout, List.copyOf(strips));
    }

    private static Optional<Strip> strip(CellLayout layout, Side side, boolean isFirst) {
        BorderGrid grid = layout.grid();
        // The innermost and the outermost round reach as far as any between them.
        IntSummaryStatistics columns = new IntSummaryStatistics();
        for (int round : List.of(1, layout.rounds())) {
            int stitches = stitches(grid, side, round);
            boolean isSideDrawn = IntStream.rangeClosed(1, stitches)
                    .anyMatch(stitch -> layout.isDrawn(cell(grid, side, round, stitch)));
            IntStream.rangeClosed(isFirst ? 0 : 1, stitches + 1)
                    .filter(stitch -> isSideDrawn && layout.isDrawn(cell(grid, side, round, stitch)))
                    .forEach(stitch -> columns.accept(stitch - round));
        }
        return columns.getCount() == 0
                ? Optional.empty()
                : Optional.of(new Strip(side, columns.getMin(), columns.getMax()));
    }

    private static int stitches(BorderGrid grid, Side side, int round) {
        return grid.border().on(side).stitches(round, grid.repeats().get(side));
    }

    /** The cell of a stitch, counted from 1; 0 is the corner before the first of them, one more than all that after the last. */
    private static GridCell cell(BorderGrid grid, Side side, int round, int stitch) {
        if (stitch == 0) {
            return grid.cornerCell(side.previous(), round);
        }
        return stitch > stitches(grid, side, round)
                ? grid.cornerCell(side, round)
                : grid.cellOf(side, new SidePlace(round, stitch));
    }

    int rows() {
        return layout.rounds();
    }

    int columns() {
        return strips.stream().mapToInt(Strip::columns).sum();
    }

    /** Whether it shows two sides and the corner between them. */
    boolean hasCorner() {
        return strips.size() > 1;
    }

    /** What is drawn in a row and a column; empty where the round does not reach. */
    Optional<GridCell> cellAt(int row, int column) {
        int from = 0;
        for (Strip strip : strips) {
            if (column < from + strip.columns()) {
                int round = row + 1;
                int stitch = strip.first() + column - from + round;
                boolean reaches = stitch >= 0 && stitch <= stitches(layout.grid(), strip.side(), round) + 1;
                return Optional.of(stitch)
                        .filter(at -> reaches && (at > 0 || from(strip) == 0))
                        .map(at -> cell(layout.grid(), strip.side(), round, at))
                        .filter(layout::isDrawn);
            }
            from += strip.columns();
        }
        return Optional.empty();
    }

    private int from(Strip strip) {
        return strips.subList(0, strips.indexOf(strip)).stream()
                .mapToInt(Strip::columns)
                .sum();
    }

    /** The row of a drawn cell; empty for the base round. */
    Optional<Integer> rowOf(GridCell cell) {
        return layout.contentOf(cell).map(drawn -> drawn.round() - 1).filter(row -> row >= 0);
    }

    /** The column of a drawn cell. */
    Optional<Integer> columnOf(GridCell cell) {
        for (Strip strip : strips) {
            Optional<Integer> column = columnIn(strip, cell);
            if (column.isPresent()) {
                return column.map(at -> from(strip) + at - strip.first());
            }
        }
        return Optional.empty();
    }

    private Optional<Integer> columnIn(Strip strip, GridCell cell) {
        if (layout.grid().contentOf(cell) instanceof SideStitch stitch && stitch.side() == strip.side()) {
            return Optional.of(stitch.place().fabricColumn());
        }
        if (layout.grid().contentOf(cell) instanceof CornerChains corner) {
            if (corner.after() == strip.side()) {
                return Optional.of(stitches(layout.grid(), strip.side(), corner.round()) + 1 - corner.round());
            }
            if (corner.after().next() == strip.side() && from(strip) == 0) {
                return Optional.of(-corner.round());
            }
        }
        return Optional.empty();
    }
}
