package edgewright.chart;

import java.util.List;

/**
 * The hand that holds the hook. With the right side facing, a right-handed maker travels anticlockwise round the piece and a
 * left-handed one clockwise; the border of the second is the mirror image of that of the first. Source: common practice, no
 * source.
 */
public enum HookHand {
    RIGHT,
    LEFT;

    /** The four sides in the order in which this hand comes to them, the top first. */
    public List<Side> workingOrder() {
        return this == RIGHT
                ? List.of(Side.TOP, Side.LEFT, Side.BOTTOM, Side.RIGHT)
                : List.of(Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT);
    }

    /** The side that this hand works after the given one. */
    public Side after(Side side) {
        return this == RIGHT ? side.next() : side.opposite().next();
    }
}
