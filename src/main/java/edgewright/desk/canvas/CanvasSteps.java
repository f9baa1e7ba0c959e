package edgewright.desk.canvas;

import edgewright.chart.BorderGrid;
import edgewright.chart.GridCell;
import edgewright.chart.GridContent.CornerChains;
import edgewright.chart.GridContent.SideStitch;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.draw.grid.Direction;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.CellLayout;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Where the cursor gets to from a drawn cell, whatever part of the border is drawn. */
final class CanvasSteps {
    private CanvasSteps() {}

    /**
     * The next stitch in a direction as it is seen. Corner chains are stepped over; where nothing lies beyond them, the step
     * leads round the corner to the other side, along the same round, if that is drawn.
     */
    static Optional<GridCell> next(CellLayout layout, GridCell from, Direction heading, Predicate<GridCell> isStitch) {
        Optional<GridCell> next = layout.neighbour(from, heading);
        while (next.isPresent() && !isStitch.test(next.get())) {
            Optional<GridCell> beyond = layout.neighbour(next.get(), heading);
            if (beyond.isEmpty() && layout.grid().contentOf(next.get()) instanceof CornerChains corner) {
                int way = sideIn(layout, from)
                                .filter(side -> side != corner.after())
                                .isPresent()
                        ? -1
                        : 1;
                return roundTheCorner(layout, corner, way).filter(isStitch);
            }
            next = beyond;
        }
        return next;
    }

    /** The first stitch after the corner, or the last one before it for a negative way, if it is drawn. */
    private static Optional<GridCell> roundTheCorner(CellLayout layout, CornerChains corner, int way) {
        Side side = way > 0 ? corner.after().next() : corner.after();
        int stitch = way > 0 ? 1 : stitches(layout.grid(), side, corner.round());
        return Optional.of(layout.grid().cellOf(side, new SidePlace(corner.round(), stitch)))
                .filter(layout::isDrawn);
    }

    private static int stitches(BorderGrid grid, Side side, int round) {
        return grid.border().on(side).stitches(round, grid.repeats().get(side));
    }

    /**
     * The stitch that is worked next, or before it for a negative way; from side to side round a drawn corner. Empty where no
     * more is drawn.
     */
    static Optional<GridCell> along(CellLayout layout, GridCell from, int way, Predicate<GridCell> isStitch) {
        if (!(layout.grid().contentOf(from) instanceof SideStitch standing)) {
            return Optional.empty();
        }
        Side side = standing.side();
        int round = standing.place().round();
        int stitch = standing.place().stitch() + way;
        if (stitch >= 1 && stitch <= stitches(layout.grid(), side, round)) {
            GridCell next = layout.grid().cellOf(side, new SidePlace(round, stitch));
            return Optional.of(next).filter(layout::isDrawn).filter(isStitch);
        }
        CornerChains corner = new CornerChains(way > 0 ? side : side.previous(), round);
        return layout.isDrawn(layout.grid().cornerCell(corner.after(), round))
                ? roundTheCorner(layout, corner, way).filter(isStitch)
                : Optional.empty();
    }

    /** The last stitch of the round on this side in working order, or the first for a negative way. */
    static GridCell end(CellLayout layout, GridCell from, int way, Predicate<GridCell> isStitch) {
        Optional<Side> side = sideIn(layout, from);
        GridCell at = from;
        while (true) {
            Optional<GridCell> next = along(layout, at, way, isStitch)
                    .filter(cell -> sideIn(layout, cell).equals(side));
            if (next.isEmpty()) {
                return at;
            }
            at = next.get();
        }
    }

    private static Optional<Side> sideIn(CellLayout layout, GridCell cell) {
        return layout.grid().contentOf(cell) instanceof SideStitch stitch
                ? Optional.of(stitch.side())
                : Optional.empty();
    }

    /** That of the cells which lies nearest to a cell. */
    static Optional<GridCell> nearest(CellLayout layout, GridCell to, List<GridCell> cells) {
        return cells.stream().min(Comparator.comparingDouble(cell -> distance(layout.areaOf(cell), layout.areaOf(to))));
    }

    private static double distance(Area one, Area other) {
        return Math.hypot(one.middleXMm() - other.middleXMm(), one.middleYMm() - other.middleYMm());
    }
}
