package edgewright.chart;

/**
 * What the designer of this chart allows.
 *
 * @param landOnCornerChain whether a long stitch may land in a corner chain
 * @param stackLongStitches whether a long stitch may land on a long stitch
 * @param looseRun more long stitches than this side by side are warned of; 1 or more
 */
public record Rules(boolean landOnCornerChain, boolean stackLongStitches, int looseRun, Extras extras) {
    /** The rules of a chart that states none. */
    public static final Rules DEFAULT = new Rules(true, false, 9, Extras.NONE);

    public Rules {
        if (looseRun < 1) {
            throw new IllegalArgumentException("looseRun is " + looseRun + ": expected 1 or more");
        }
    }

    /** These rules with landing in corner chains allowed or not. */
    public Rules withLandOnCornerChain(boolean allowed) {
        return new Rules(allowed, stackLongStitches, looseRun, extras);
    }

    /** These rules with stacking allowed or not. */
    public Rules withStackLongStitches(boolean allowed) {
        return new Rules(landOnCornerChain, allowed, looseRun, extras);
    }

    /** These rules with another longest run. */
    public Rules withLooseRun(int longest) {
        return new Rules(landOnCornerChain, stackLongStitches, longest, extras);
    }
}
