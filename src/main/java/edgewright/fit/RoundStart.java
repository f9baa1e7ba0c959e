package edgewright.fit;

import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;

/**
 * Where a round is started: the stitch in which its yarn is joined.
 *
 * @param stitch the stitch of the round, counted from the corner just turned with the stitch in the corner chain as number 1.
 *     Whoever looks at the round below finds the stitch that it stands on under the same number, counting the corner chain
 *     itself as number 1
 * @param place the same stitch in the chart
 * @param movedOn how many stitches the start has stepped on from its column; 0 if it stands in it
 * @param free whether a stitch stands there that a yarn can be joined in. Not so if every stitch within a repeat's width is
 *     long or a chain; the start then stays in its column
 */
public record RoundStart(int round, Side side, SidePlace stitch, Place place, int movedOn, boolean free) {
    /** The number of the stitch from the corner; the stitch in the corner chain is number 1. */
    public int number() {
        return stitch.stitch();
    }
}
