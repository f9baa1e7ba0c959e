package edgewright.draw.picture;

import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * All marks of a picture, layer by layer: those of its cells, which are made when they are asked for, and what stands under,
 * between and around them.
 */
public final class PictureMarks {
    /** How many cells a mark can reach beyond its own: a long stitch where it lands, a ring a little further. */
    private static final int REACH = Stitch.DEEPEST + 1;

    private final PictureStyle style;
    private final CellLayout layout;
    private final CellMarks cells;
    private final List<Placed> furniture;

    /** A mark, and where it lies, which takes long to find out for letters. */
    private record Placed(Mark mark, Area bounds) {}

    /** @param furniture the marks that belong to no cell, those of one layer in the order in which they are drawn */
    public PictureMarks(PictureStyle style, CellLayout layout, CellMarks cells, List<Mark> furniture) {
        this.style = style;
        this.layout = layout;
        this.cells = cells;
        this.furniture =
                furniture.stream().map(mark -> new Placed(mark, mark.bounds())).toList();
    }

    /** The paper, and the marks that lie in an area or touch it, from the lowest to the topmost. */
    public List<Mark> in(Area area) {
        List<DrawnCell> near = layout.cellsNear(area, REACH);
        List<Mark> marks = new ArrayList<>();
        addFurniture(area, Layer.PAPER, marks);
        addFurniture(area, Layer.FABRIC, marks);
        if (style.fabric()) {
            near.forEach(cell -> addIfTouching(area, cell, cells.fabric(cell), marks));
        }
        if (style.fabric()) {
            addOfSome(area, near, cells::areaEdges, marks);
        }
        addFurniture(area, Layer.GRID, marks);
        if (style.marks()) {
            addOfSome(area, near, cells::toDo, marks);
        }
        addFurniture(area, Layer.LABELS, marks);
        if (style.labels() && style.marks()) {
            addOfSome(area, near, cells::roundNumber, marks);
        }
        if (cells.hasFlags()) {
            addOfSome(area, near, cells::flags, marks);
        }
        addFurniture(area, Layer.FLAGS, marks);
        return marks;
    }

    /**
     * Where a place of the chart shows: for every cell in which it is drawn, that cell with all that a change of its stitch or
     * of its flags can alter.
     */
    public List<Area> areasOf(Place place) {
        return layout.cellsOf(place).stream()
                .map(cell -> {
                    Frame frame = layout.frameOf(
                            cell, layout.stitchIn(cell).orElseThrow().side());
                    // A long stitch reaches two cells towards the piece; the ring's number stands out by less than one.
                    return Area.between(
                                    frame.xMm(-0.5, 0.5),
                                    frame.yMm(-0.5, 0.5),
                                    frame.xMm(0.5, -2.5),
                                    frame.yMm(0.5, -2.5))
                            .grown(layout.cellMm());
                })
                .toList();
    }

    private void addOfSome(
            Area area, List<DrawnCell> near, Function<DrawnCell, Optional<Mark>> marksOf, List<Mark> marks) {
        near.forEach(cell -> marksOf.apply(cell).ifPresent(mark -> addIfTouching(area, cell, mark, marks)));
    }

    private void addIfTouching(Area area, DrawnCell cell, Mark mark, List<Mark> marks) {
        if (area.holds(layout.area()) || area.holds(layout.areaOf(cell.cell())) || area.touches(mark.bounds())) {
            marks.add(mark);
        }
    }

    private void addFurniture(Area area, Layer layer, List<Mark> marks) {
        for (Placed placed : furniture) {
            if (placed.mark().kind().layer() == layer && (layer == Layer.PAPER || area.touches(placed.bounds()))) {
                marks.add(placed.mark());
            }
        }
    }
}
