package edgewright.chart;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One of the four sides of the piece, in the order in which a right-handed maker comes to them: anticlockwise, seen from
 * the right side.
 */
public enum Side {
    TOP,
    LEFT,
    BOTTOM,
    RIGHT;

    /** The side that is worked after this one. */
    public Side next() {
        return switch (this) {
            case TOP -> LEFT;
            case LEFT -> BOTTOM;
            case BOTTOM -> RIGHT;
            case RIGHT -> TOP;
        };
    }

    /** The sides of which something is true, in this order. */
    public static List<Side> where(Predicate<Side> isTrue) {
        return Stream.of(values()).filter(isTrue).toList();
    }

    /** The side across the piece. */
    public Side opposite() {
        return next().next();
    }

    /** Whether stitches of this side lie side by side from left to right or right to left: top and bottom. */
    public boolean isLevel() {
        return this == TOP || this == BOTTOM;
    }
}
