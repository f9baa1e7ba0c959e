package edgewright.booklet.choice;

/** Which pictures of the chart are printed. */
public enum ChartKind {
    /** One corner, with a side on each arm. */
    CORNER,
    /** One level side, from corner to corner. */
    SIDE,
    /** The corner, and after it the side. */
    BOTH;

    /** Whether the corner is printed. */
    public boolean hasCorner() {
        return this != SIDE;
    }

    /** Whether the side is printed. */
    public boolean hasSide() {
        return this != CORNER;
    }
}
