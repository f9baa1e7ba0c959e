package edgewright.words.terms;

import edgewright.chart.Stitch;

/** What the trade has a word for, and a sentence that says how it is done. */
public enum TradeWord {
    BACK_LOOP,
    PLAIN,
    LONG,
    CHAIN,
    /** The tall stitch of a back layer. */
    TALL,
    /** The slip stitch that joins two layers. */
    SLIP,
    /** Leaving a stitch out. */
    MISS;

    /** The word for a stitch of the chart. */
    public static TradeWord of(Stitch stitch) {
        return switch (stitch) {
            case BACK_LOOP -> BACK_LOOP;
            case PLAIN -> PLAIN;
            case LONG -> LONG;
            case CHAIN -> CHAIN;
        };
    }
}
