package edgewright.chart;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One of the sides of the piece, in the order in which a right-handed maker comes to them: anticlockwise, seen from
 * the right side.
 */
public enum Side {
    TOP,
    LEFT,
    BOTTOM,
    RIGHT;

    /** The side that every round comes to first unless it is started elsewhere. */
    public static final Side FIRST = TOP;

    private static final Side[] ALL = values();

    /** The side that a right-handed maker works after this one. */
    public Side next() {
        return ALL[(ordinal() + 1) % ALL.length];
    }

    /** The side that a right-handed maker works before this one. */
    public Side previous() {
        return ALL[(ordinal() + ALL.length - 1) % ALL.length];
    }

    /** The sides of which something is true, in this order. */
    public static List<Side> where(Predicate<Side> isTrue) {
        return Stream.of(values()).filter(isTrue).toList();
    }

    /** The side across the piece. */
    public Side opposite() {
        return ALL[(ordinal() + ALL.length / 2) % ALL.length];
    }

    /** Whether stitches of this side lie side by side from left to right or right to left: top and bottom. */
    public boolean isLevel() {
        return this == TOP || this == BOTTOM;
    }
}
