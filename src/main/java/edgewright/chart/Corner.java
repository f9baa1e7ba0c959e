package edgewright.chart;

/**
 * How the corners are turned: a group of chains with one stitch worked into its first and one into its last chain.
 *
 * @param chains 1, 2 or 3; 2 is usual
 */
public record Corner(int chains, Extras extras) {
    /** The most chains of a corner. */
    public static final int MOST_CHAINS = 3;

    /** The usual corner of two chains. */
    public static final Corner DEFAULT = new Corner(2, Extras.NONE);

    public Corner {
        requireChains(chains);
    }

    /** Whether a corner can have so many chains. */
    public static boolean isTurnedWith(int chains) {
        return chains >= 1 && chains <= MOST_CHAINS;
    }

    /** @throws IllegalArgumentException if no corner has so many chains */
    public static void requireChains(int chains) {
        if (!isTurnedWith(chains)) {
            throw new IllegalArgumentException("a corner of " + chains + " chains: expected 1, 2 or 3");
        }
    }

    /** The chains of all corners of a round together; there is a corner at the end of every side. */
    public static long chainsOfRound(int chains) {
        return (long) Side.values().length * chains;
    }

    /** This corner with another number of chains. */
    public Corner withChains(int number) {
        return new Corner(number, extras);
    }
}
