package edgewright.draw.picture;

import edgewright.chart.BorderGrid;
import edgewright.chart.GridCell;
import edgewright.chart.PerSide;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Where the cells of a corner lie: the corner is drawn as an angle of two arms, with the piece between them.
 *
 * <p>Cells are those of a border with the drawn repeats on every side; the drawn corner is the one between top and left, which
 * {@link Rotation} then rotates.
 */
public final class CornerLayout extends CellLayout {
    private final int repeats;

    /**
     * @param rounds the outermost round
     * @param repeats how often the repeat is drawn on each arm
     */
    CornerLayout(SideShape shape, int rounds, int repeats, Placement placement) {
        super(corner(shape, rounds, repeats), placement);
        this.repeats = repeats;
    }

    private static Part corner(SideShape shape, int rounds, int repeats) {
        return new Part(
                new BorderGrid(shape, PerSide.all(repeats)),
                rounds,
                PerSide.each(CornerLayout::sectionsOf),
                EnumSet.of(Arm.INCOMING.side()));
    }

    private static Set<Section> sectionsOf(Side side) {
        return Arm.of(side)
                .map(arm -> EnumSet.of(Section.REPEAT, arm.atCorner()))
                .orElse(EnumSet.noneOf(Section.class));
    }

    /** How often the repeat is drawn on each arm. */
    public int repeats() {
        return repeats;
    }

    /** The arm on which a stitch is drawn in a cell; empty for any other cell. */
    public Optional<Arm> armIn(GridCell cell) {
        return stitchIn(cell).flatMap(stitch -> Arm.of(stitch.side()));
    }

    /** The cell of the corner chains of a round. */
    public GridCell cornerCell(int round) {
        return grid().cornerCell(Arm.INCOMING.side(), round);
    }
}
