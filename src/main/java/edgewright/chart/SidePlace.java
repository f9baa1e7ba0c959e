package edgewright.chart;

/**
 * The p-th stitch of a whole side in a round, counted from 1 at the corner just turned, the corner chains not counted.
 *
 * <p>Not the place in a chart: the stitches of the repeat stand in a side as often as the repeat is worked; see {@link
 * SideShape#placeOf}.
 *
 * @param round 0 (the base round) or more
 * @param stitch 1 or more
 */
public record SidePlace(int round, int stitch) {
    public SidePlace {
        if (round < 0 || stitch < 1) {
            throw new IllegalArgumentException("no side has stitch " + stitch + " in round " + round);
        }
    }

    /**
     * The vertical column of the fabric, c = p - r: the stitch at (r, c) stands on the one at (r - 1, c). Columns 1 and up
     * stand on the base round; 0 and below on the corner just turned.
     */
    public int fabricColumn() {
        return stitch - round;
    }
}
