package edgewright.draw.fabric;

/**
 * The unevenness of a hand: small differences between stitches that are the same in the chart. A stitch has one of a few ways to
 * lie, which its cell decides, so the same chart always gives the same picture.
 */
record Hand(int way) {
    /** How many ways there are for a stitch to lie. More would not be told apart, and each is a stamp of its own. */
    static final int WAYS = 4;

    /** How the stitch lies that is worked in a cell. */
    static Hand at(int x, int y) {
        return new Hand((int) Long.remainderUnsigned(mixed(x * 0x9E3779B97F4A7C15L + y), WAYS));
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
