package edgewright.hands;

import edgewright.chart.HookHand;
import edgewright.chart.Side;
import java.util.List;

/** The way round the piece that a maker travels, right side facing. */
enum Travel {
    /** With the hook in the right hand. */
    ANTICLOCKWISE,
    /** With the hook in the left hand. */
    CLOCKWISE;

    static Travel of(HookHand hand) {
        return hand == HookHand.LEFT ? CLOCKWISE : ANTICLOCKWISE;
    }

    /** The four sides in the order in which they are come to, from this one on. */
    List<Side> from(Side side) {
        return List.of(side, after(side), after(after(side)), after(after(after(side))));
    }

    /** The side on the other side of the corner that this one ends at. */
    Side after(Side side) {
        return this == ANTICLOCKWISE ? side.next() : side.next().next().next();
    }
}
