package edgewright.desk.fitting;

/** What has changed about a piece. */
public enum PieceChange {
    /** It lies under another chart. */
    CHART,
    /** Somebody typed a number: the fields say already what it is. */
    TYPED,
    /** Numbers were put in for whoever types them: counts that were kept, or counted in the other way. */
    FILLED,
    /** Something was chosen: how its sides are known, in which round they were counted, what is wanted of the fit. */
    CHOSEN,
    /** Another hand holds the hook. */
    HAND
}
