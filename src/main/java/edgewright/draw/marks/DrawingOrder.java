package edgewright.draw.marks;

import edgewright.draw.paint.Area;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * Which marks lie over which. A mark lies one storey above the highest of the earlier marks that it overlaps, so marks of one
 * storey can be drawn in any order, as long as those below come first.
 */
public final class DrawingOrder {
    /** Marks that only touch do not overlap. */
    private static final double TOUCH_MM = 1e-6;

    /** The paper is parted into so many fields across and down; only marks that share a field are compared. */
    private static final int FIELDS = 256;

    private record Field(int across, int down) {}

    private record Laid(Area area, int storey) {}

    private final Map<Field, List<Laid>> fields = new HashMap<>();
    private final double fieldMm;

    private DrawingOrder(double sheetMm) {
        this.fieldMm = Math.max(sheetMm / FIELDS, TOUCH_MM);
    }

    /**
     * The storey of each mark, from 0.
     *
     * @param marks from the lowest to the topmost
     * @param cancelled asked before each mark; once it answers true the work ends with a {@link
     *     java.util.concurrent.CancellationException}
     */
    public static List<Integer> storeys(List<Mark> marks, Drawing drawing, BooleanSupplier cancelled) {
        DrawingOrder stacking = new DrawingOrder(Math.max(drawing.widthMm(), drawing.heightMm()));
        return marks.stream()
                .map(mark -> {
                    Drawing.requireWanted(cancelled);
                    return stacking.lay(mark.bounds());
                })
                .toList();
    }

    private int lay(Area area) {
        int storey = 0;
        List<Field> covered = covered(area);
        for (Field field : covered) {
            for (Laid laid : fields.getOrDefault(field, List.of())) {
                if (laid.storey() >= storey && overlap(laid.area(), area)) {
                    storey = laid.storey() + 1;
                }
            }
        }
        for (Field field : covered) {
            fields.computeIfAbsent(field, f -> new ArrayList<>()).add(new Laid(area, storey));
        }
        return storey;
    }

    private List<Field> covered(Area area) {
        List<Field> covered = new ArrayList<>();
        for (int down = field(area.yMm()); down <= field(area.bottomMm()); down++) {
            for (int across = field(area.xMm()); across <= field(area.rightMm()); across++) {
                covered.add(new Field(across, down));
            }
        }
        return covered;
    }

    /** What lies beyond the edges of the sheet is held to lie in the fields there. */
    private int field(double atMm) {
        return Math.max(0, Math.min(FIELDS, (int) (atMm / fieldMm)));
    }

    private static boolean overlap(Area one, Area other) {
        return one.xMm() < other.rightMm() - TOUCH_MM
                && other.xMm() < one.rightMm() - TOUCH_MM
                && one.yMm() < other.bottomMm() - TOUCH_MM
                && other.yMm() < one.bottomMm() - TOUCH_MM;
    }
}
