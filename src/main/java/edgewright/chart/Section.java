package edgewright.chart;

/**
 * One of the three parts of a side, in working order: from the corner just turned to the next one.
 *
 * <p>In round r the part from the corner has A + r stitches, the repeat w stitches and the part to the corner B + r
 * stitches. A, B and w are constants of the chart; see {@link SideShape}.
 */
public enum Section {
    /** From the corner just turned up to the first repeat. It grows by one stitch a round, at the corner. */
    FROM_CORNER("fromCorner"),
    /** The stitches that are worked over and over, any number of times, none included. */
    REPEAT("repeat"),
    /** From the last repeat up to the next corner. It grows by one stitch a round, at the corner. */
    TO_CORNER("toCorner");

    private final String member;

    Section(String member) {
        this.member = member;
    }

    /**
     * How much higher the place of a fabric column is one round up: 1 in the part from the corner, which grows at its first place,
     * else 0.
     */
    public int shift() {
        return this == FROM_CORNER ? 1 : 0;
    }

    /** The place of a fabric column so many rounds up, or down where {@code rounds} is negative; it may lie past the section. */
    public int placeAbove(int place, int rounds) {
        return place + rounds * shift();
    }

    /** The member that holds this section in a chart file, and its name wherever findings are given as data. */
    public String member() {
        return member;
    }
}
