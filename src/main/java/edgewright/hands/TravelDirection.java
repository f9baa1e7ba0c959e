package edgewright.hands;

import edgewright.chart.HookHand;
import edgewright.chart.Side;
import java.util.List;
import java.util.stream.Stream;

/** The way round the piece that a maker travels, right side facing. */
enum TravelDirection {
    /** With the hook in the right hand. */
    ANTICLOCKWISE,
    /** With the hook in the left hand. */
    CLOCKWISE;

    static TravelDirection of(HookHand hand) {
        return hand == HookHand.LEFT ? CLOCKWISE : ANTICLOCKWISE;
    }

    /** The sides in the order in which they are come to, from this one on. */
    List<Side> from(Side side) {
        return Stream.iterate(side, this::after).limit(Side.values().length).toList();
    }

    /** The side on the other side of the corner that this one ends at. */
    Side after(Side side) {
        return this == ANTICLOCKWISE ? side.next() : side.previous();
    }
}
