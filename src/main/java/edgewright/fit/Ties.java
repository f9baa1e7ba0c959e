package edgewright.fit;

import edgewright.chart.Side;
import java.util.List;

/**
 * Which opposite sides must come out with the same count. A piece with square corners needs both; a maker may untie a pair,
 * for a piece that is not a rectangle.
 */
public record Ties(boolean topAndBottom, boolean leftAndRight) {
    /** Opposite sides are equal; the usual case. */
    public static final Ties OPPOSITE = new Ties(true, true);

    /** Every side is fitted alone. */
    public static final Ties NONE = new Ties(false, false);

    /** Whether this side must come out with the same count as the one opposite. */
    public boolean tied(Side side) {
        return side.isLevel() ? topAndBottom : leftAndRight;
    }

    /** These ties without the one that holds this side. */
    public Ties without(Side side) {
        return side.isLevel() ? new Ties(false, leftAndRight) : new Ties(topAndBottom, false);
    }

    /** The sides that must have the same count as this one, itself among them, in working order. */
    List<Side> group(Side side) {
        return tied(side) ? Side.where(other -> other.isLevel() == side.isLevel()) : List.of(side);
    }
}
