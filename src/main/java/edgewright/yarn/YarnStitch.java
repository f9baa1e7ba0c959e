package edgewright.yarn;

import edgewright.chart.Stitch;

/** The kinds of stitch that a border is worked in, as far as they take yarn of their own amount. */
public enum YarnStitch {
    /** Worked into the back loop only. */
    BACK_LOOP,
    /** Worked through both loops. */
    PLAIN,
    /** Dropped into the round two below. */
    LONG,
    /** A chain, inside a side or at a corner. */
    CHAIN,
    /** The tall stitch of a back layer. */
    TALL,
    /** The stitch that joins two layers. */
    SLIP;

    /** The kind of a charted stitch. */
    public static YarnStitch of(Stitch stitch) {
        return switch (stitch) {
            case BACK_LOOP -> BACK_LOOP;
            case PLAIN -> PLAIN;
            case LONG -> LONG;
            case CHAIN -> CHAIN;
        };
    }
}
