package edgewright.desk.picture;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;

/** The parts of a canvas that are to be painted again, put together where that costs hardly more than each alone. */
public final class DamagedParts {
    /** Beyond this many nobody looks for neighbours; one rectangle round all of them is painted. */
    private static final int MOST_COMPARED = 160;

    private DamagedParts() {}

    /**
     * Parts that cover all of these. Two become one if the rectangle round both is no more than half as large again as they are
     * together, as of cells side by side.
     */
    public static List<Rectangle> merged(List<Rectangle> parts) {
        if (parts.size() > MOST_COMPARED) {
            return List.of(parts.stream().reduce(Rectangle::union).orElseThrow());
        }
        List<Rectangle> merged = new ArrayList<>();
        for (Rectangle part : parts) {
            if (!part.isEmpty()) {
                add(part, merged);
            }
        }
        return merged;
    }

    private static void add(Rectangle part, List<Rectangle> merged) {
        for (int i = 0; i < merged.size(); i++) {
            Rectangle both = part.union(merged.get(i));
            if (2 * size(both) <= 3 * (size(part) + size(merged.get(i)))) {
                merged.remove(i);
                // Larger now, it may lie beside another one.
                add(both, merged);
                return;
            }
        }
        merged.add(part);
    }

    private static long size(Rectangle part) {
        return (long) part.width * part.height;
    }
}
