package edgewright.chart;

import java.util.List;
import java.util.stream.Stream;

/**
 * The hand that holds the hook. With the right side facing, a right-handed maker travels anticlockwise round the piece and a
 * left-handed one clockwise; the border of the second is the mirror image of that of the first. Source: common practice, no
 * source.
 */
public enum HookHand {
    RIGHT,
    LEFT;

    /** The sides in the order in which this hand comes to them, the top first. */
    public List<Side> workingOrder() {
        return Stream.iterate(Side.FIRST, this::after)
                .limit(Side.values().length)
                .toList();
    }

    /** The side that this hand works after the given one. */
    public Side after(Side side) {
        return this == RIGHT ? side.next() : side.previous();
    }
}
