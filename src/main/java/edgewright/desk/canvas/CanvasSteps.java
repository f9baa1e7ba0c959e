package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.Arm;
import edgewright.draw.picture.CornerLayout;
import edgewright.draw.picture.Direction;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Where the cursor gets to from a drawn cell. */
final class CanvasSteps {
    private CanvasSteps() {}

    /**
     * The next stitch in a direction as it is seen. On the diagonal lie corner chains, which are stepped over; where nothing
     * lies beyond them, the step leads round the corner to the other arm, along the same round.
     */
    static Optional<GridCell> next(
            CornerLayout layout, GridCell from, Direction heading, Predicate<GridCell> isStitch) {
        Optional<GridCell> next = layout.neighbour(from, heading);
        while (next.isPresent() && !isStitch.test(next.get())) {
            Optional<GridCell> beyond = layout.neighbour(next.get(), heading);
            if (beyond.isEmpty() && layout.cornerIn(next.get()).isPresent()) {
                return roundTheCorner(layout, next.get(), from, isStitch);
            }
            next = beyond;
        }
        return next;
    }

    /** The stitch on the other side of the corner chains, seen from where the step came from. */
    private static Optional<GridCell> roundTheCorner(
            CornerLayout layout, GridCell corner, GridCell from, Predicate<GridCell> isStitch) {
        int round = layout.cornerIn(corner).orElseThrow();
        Arm came = layout.armIn(from).orElse(Arm.INCOMING);
        GridCell first = came == Arm.INCOMING
                ? layout.cellOf(Arm.OUTGOING.side(), new Place(round, Section.FROM_CORNER, 1), 1)
                : layout.cellOf(Arm.INCOMING.side(), lastBeforeCorner(layout, round), 1);
        return Optional.of(first).filter(isStitch);
    }

    private static Place lastBeforeCorner(CornerLayout layout, int round) {
        return new Place(
                round,
                Section.TO_CORNER,
                layout.grid().border().on(Arm.INCOMING.side()).length(Section.TO_CORNER, round));
    }

    /**
     * The stitch that is worked next, or before it for a negative way; from the incoming arm on to the outgoing one. Empty
     * where no more is drawn.
     */
    static Optional<GridCell> along(CornerLayout layout, GridCell from, int way, Predicate<GridCell> isStitch) {
        Arm arm = layout.armIn(from).orElse(Arm.INCOMING);
        // Unturned, the incoming arm is worked to the left and the outgoing one downwards.
        GridCell next =
                arm == Arm.INCOMING ? new GridCell(from.x() - way, from.y()) : new GridCell(from.x(), from.y() + way);
        if (!layout.isDrawn(next)) {
            return Optional.empty();
        }
        return isStitch.test(next)
                ? Optional.of(next)
                : layout.cornerIn(next).flatMap(round -> roundTheCorner(layout, next, from, isStitch));
    }

    /** The last stitch of the round on this arm in working order, or the first for a negative way. */
    static GridCell end(CornerLayout layout, GridCell from, int way, Predicate<GridCell> isStitch) {
        Optional<Arm> arm = layout.armIn(from);
        GridCell at = from;
        while (true) {
            Optional<GridCell> next = along(layout, at, way, isStitch)
                    .filter(cell -> layout.armIn(cell).equals(arm));
            if (next.isEmpty()) {
                return at;
            }
            at = next.get();
        }
    }

    /** That of the cells which lies nearest to a cell. */
    static Optional<GridCell> nearest(CornerLayout layout, GridCell to, List<GridCell> cells) {
        return cells.stream().min(Comparator.comparingDouble(cell -> distance(layout.areaOf(cell), layout.areaOf(to))));
    }

    private static double distance(Area one, Area other) {
        return Math.hypot(one.middleXMm() - other.middleXMm(), one.middleYMm() - other.middleYMm());
    }
}
