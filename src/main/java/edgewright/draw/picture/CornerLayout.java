package edgewright.draw.picture;

import edgewright.chart.BorderGrid;
import edgewright.chart.BorderShape;
import edgewright.chart.GridCell;
import edgewright.chart.PerSide;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.draw.grid.Rotation;
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
    CornerLayout(BorderShape border, int rounds, int repeats, Placement placement) {
        super(corner(border, rounds, repeats), placement);
        this.repeats = repeats;
    }

    private static Part corner(BorderShape border, int rounds, int repeats) {
        return new Part(
                new BorderGrid(border, PerSide.all(repeats)),
                rounds,
                PerSide.each(CornerLayout::sectionsOf),
                EnumSet.of(Arm.INCOMING.side()));
    }

    private static Set<Section> sectionsOf(Side side) {
        Set<Section> sections = EnumSet.noneOf(Section.class);
        Arm.of(side)
                .ifPresent(arm -> Section.of(side).stream()
                        .filter(section -> section.isRepeat() || section == arm.atCorner())
                        .forEach(sections::add));
        return sections;
    }

    /** How often the repeat is drawn on each arm. */
    public int repeats() {
        return repeats;
    }

    /** How the side is put together that an arm is drawn of. */
    SideShape shape(Arm arm) {
        return grid().border().on(arm.side());
    }

    /** Which stitch an arm's repeats begin with, counted in fabric columns from the corner of the base round, from 0. */
    int repeatsBegin(Arm arm) {
        return shape(arm).length(arm.atCorner(), 0);
    }

    /** Where an arm's repeats end, counted likewise. */
    int end(Arm arm) {
        return repeatsBegin(arm) + repeats * shape(arm).w();
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
