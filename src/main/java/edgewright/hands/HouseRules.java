package edgewright.hands;

/**
 * What a pattern lets its maker do where hands could do it but a designer may not want it.
 *
 * @param landOnCornerChain whether a long stitch may be dropped into the chains of a corner
 * @param stackLongStitches whether a long stitch may be dropped onto a long stitch
 */
public record HouseRules(boolean landOnCornerChain, boolean stackLongStitches) {
    /** Whatever hands can do. */
    public static final HouseRules ALL_ALLOWED = new HouseRules(true, true);
}
