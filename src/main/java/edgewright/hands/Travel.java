package edgewright.hands;

import edgewright.chart.HookHand;
import java.util.List;

/** The way round the piece that a maker travels, right side facing. Sides count from 0: top, left, bottom, right. */
enum Travel {
    /** With the hook in the right hand. */
    ANTICLOCKWISE(1),
    /** With the hook in the left hand. */
    CLOCKWISE(3);

    private final int step;

    Travel(int step) {
        this.step = step;
    }

    static Travel of(HookHand hand) {
        return hand == HookHand.LEFT ? CLOCKWISE : ANTICLOCKWISE;
    }

    /** The four sides in the order in which they are come to, from this one on. */
    List<Integer> from(int side) {
        return List.of(side, after(side), after(after(side)), after(after(after(side))));
    }

    int after(int side) {
        return (side + step) % Fabric.SIDES;
    }
}
