package edgewright.draw.picture;

import edgewright.chart.BorderGrid;
import edgewright.chart.PerSide;
import edgewright.chart.Section;
import edgewright.chart.Side;
import java.util.EnumSet;

/** Where the cells of a whole border lie: all sides and all corners, around the piece. */
final class BorderLayout extends CellLayout {
    /** @param rounds the outermost round */
    BorderLayout(BorderGrid grid, int rounds, Placement placement) {
        super(new Part(grid, rounds, PerSide.all(EnumSet.allOf(Section.class)), EnumSet.allOf(Side.class)), placement);
    }
}
