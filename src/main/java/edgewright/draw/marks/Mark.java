package edgewright.draw.marks;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import java.util.List;
import java.util.Optional;

/**
 * One thing a drawing says, and the shapes that say it.
 *
 * @param cell the cell of the squared paper it belongs to, before it is rotated; empty for what lies beside the cells
 * @param place the place in the chart; the repeat is drawn several times, so several marks can have one place. Empty for all
 *     that is no stitch of a charted round
 * @param yarn the id of the yarn it shows or is worked in; empty if there is none
 * @param shapes in the order in which they are drawn; never changed
 */
public record Mark(
        MarkKind kind, Optional<GridCell> cell, Optional<Place> place, Optional<String> yarn, List<Shape> shapes) {
    public Mark {
        shapes = List.copyOf(shapes);
    }

    /** A mark that belongs to no cell. */
    public static Mark beside(MarkKind kind, List<Shape> shapes) {
        return new Mark(kind, Optional.empty(), Optional.empty(), Optional.empty(), shapes);
    }

    /** Has the driver draw all shapes. */
    public void drawOn(Surface surface) {
        for (Shape shape : shapes) {
            shape.drawOn(surface);
        }
    }

    /** The smallest area known to hold all shapes; an empty one at zero for a mark without shapes. */
    public Area bounds() {
        return shapes.stream().map(Shape::bounds).reduce(Area::with).orElse(new Area(0, 0, 0, 0));
    }
}
