package edgewright.chart;

/**
 * How the four corners are turned: a group of chains with one stitch worked into its first and one into its last chain.
 *
 * @param chains 1, 2 or 3; 2 is usual
 */
public record Corner(int chains, Extras extras) {
    /** The most chains of a corner. */
    public static final int MOST_CHAINS = 3;

    /** The usual corner of two chains. */
    public static final Corner DEFAULT = new Corner(2, Extras.NONE);

    public Corner {
        if (chains < 1 || chains > MOST_CHAINS) {
            throw new IllegalArgumentException("a corner of " + chains + " chains: expected 1, 2 or 3");
        }
    }

    /** This corner with another number of chains. */
    public Corner withChains(int number) {
        return new Corner(number, extras);
    }
}
