package edgewright.fit;

import edgewright.chart.Side;

/** A way out of too many changes on a side. */
public sealed interface TooManyChangesRemedy {
    /** Choose another number for this side, and for the opposite one if the two are tied; corner chains not counted. */
    record OtherCount(Side side, int stitches) implements TooManyChangesRemedy {}

    /** Let this side and the opposite one come out with different counts. */
    record Untie(Side side) implements TooManyChangesRemedy {}
}
