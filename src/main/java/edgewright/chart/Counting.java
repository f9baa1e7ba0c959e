package edgewright.chart;

/**
 * The two ways of counting a side. Many makers count one corner chain at each end as part of the side; then every count is
 * two higher. A count that is shown anywhere says which of the two it is. Source: common practice, no source.
 */
public enum Counting {
    /** Stitches only; the default. */
    STITCHES(0),
    /** Stitches and one corner chain at each end. */
    WITH_CHAINS(2);

    private final int chains;

    Counting(int chains) {
        this.chains = chains;
    }

    /** The count that this way of counting gives to a side of so many stitches. */
    public int shown(int stitches) {
        return stitches + chains;
    }

    /** The stitches of a side with this count; the reverse of {@link #shown}. */
    public int stitches(int count) {
        return count - chains;
    }
}
