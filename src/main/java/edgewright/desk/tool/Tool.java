package edgewright.desk.tool;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import java.util.List;
import java.util.Set;

/**
 * What the hand holds: it says which stitches it works on its way over the chart. A tool remembers nothing and changes nothing;
 * {@link Stroke} works what it says.
 */
public interface Tool {
    /** Its name in texts, keys and tests. */
    String id();

    /** What it does. */
    Use use();

    /**
     * The stitches that it works, without their mirror images, in the order in which they are worked.
     *
     * @param way the cells that the hand has come over, the last one where it is now; at least one
     */
    Set<Place> work(Sheet sheet, List<GridCell> way);

    /** What a tool is for. */
    enum Use {
        /** It works stitches. */
        WORK,
        /** It marks stitches, and carries what is marked. */
        MARK,
        /** It shows where the cursor is to stand. */
        POINT
    }
}
