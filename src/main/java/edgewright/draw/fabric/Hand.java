package edgewright.draw.fabric;

/**
 * The unevenness of a hand: small differences between stitches that are the same in the chart. A stitch has one of a few ways to
 * lie, which its cell decides, so the same chart always gives the same picture.
 */
record Hand(int way) {
    /** How many ways there are for a stitch to lie. More would not be told apart, and each is a stamp of its own. */
    static final int WAYS = 5;

    /** How far stitches drift together, at most, and over how many cells from one way to another. */
    private static final double DRIFT = 0.16;

    private static final int WAVE = 5;

    /** How far a single stitch is off from its neighbours, at most. */
    private static final double JITTER = 0.035;

    /** Steps of a drift to a cell. */
    private static final double STEPS = 40;

    /** How the stitch lies that is worked in a cell. */
    static Hand at(int x, int y) {
        return new Hand((int) Long.remainderUnsigned(mixed(x * 0x9E3779B97F4A7C15L + y), WAYS));
    }

    /**
     * How far a cell of the fabric lies from where it would if all stitches were alike, in cells: right, then down. Neighbours
     * drift together, so nothing tears and the picture of the chart stays; each stitch is a little off besides.
     */
    static double[] drift(int x, int y) {
        return new double[] {
            rounded(DRIFT * field(x, y, 0x51L) + JITTER * scattered(x, y, 0x52L)),
            rounded(DRIFT * field(x, y, 0x53L) + JITTER * scattered(x, y, 0x54L))
        };
    }

    /** In steps too small to be seen: numbers that come again make a printed file smaller. */
    private static double rounded(double cells) {
        return Math.round(cells * STEPS) / STEPS;
    }

    /** A number from -1 to 1 that changes smoothly from cell to cell. */
    private static double field(int x, int y, long what) {
        int column = Math.floorDiv(x, WAVE);
        int row = Math.floorDiv(y, WAVE);
        double across = eased((double) Math.floorMod(x, WAVE) / WAVE);
        double down = eased((double) Math.floorMod(y, WAVE) / WAVE);
        double above = between(scattered(column, row, what), scattered(column + 1, row, what), across);
        double below = between(scattered(column, row + 1, what), scattered(column + 1, row + 1, what), across);
        return between(above, below, down);
    }

    private static double between(double from, double to, double part) {
        return from + (to - from) * part;
    }

    private static double eased(double part) {
        return part * part * (3 - 2 * part);
    }

    private static double scattered(int x, int y, long what) {
        return (mixed(mixed(x * 0x9E3779B97F4A7C15L + y) + what) >>> 11) * 0x1.0p-52 - 1;
    }

    /** A number from -1 to 1 for one of the things in which stitches differ. */
    double off(int what) {
        return (mixed(way * 31L + what) >>> 11) * 0x1.0p-52 - 1;
    }

    /** Scatters the bits of a number (the finalizer of splitmix64, from memory). */
    private static long mixed(long bits) {
        long z = bits + 0x9E3779B97F4A7C15L;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }
}
