package edgewright.fit;

/** How long stitches of a round lie to those of the rounds below, in fabric columns and in working order. */
public enum LandmarkRelation {
    /** The stitches before it and after it both stand on long stitches of the round below. */
    BETWEEN_LONGS_BELOW,
    /** The stitch before it stands on a long stitch of the round below. */
    AFTER_LONG_BELOW,
    /** The stitch after it stands on a long stitch of the round below. */
    BEFORE_LONG_BELOW,
    /** The stitch before it or the one after it stands on a long stitch of the round below. */
    BESIDE_LONG_BELOW,
    /** The nearest long stitches of the round below lie equally far before it and after it, more than one stitch away. */
    MIDWAY_BETWEEN_LONGS_BELOW,
    /** It stands over a long stitch two rounds below, and lands in it. */
    OVER_LONG_TWO_BELOW
}
