package edgewright.chart;

/** What every measured quantity is held to. */
public final class Measures {
    private Measures() {}

    /**
     * @param what what was measured, and in which unit
     * @throws IllegalArgumentException if the number is not above 0, or not finite
     */
    public static void requirePositive(double number, String what) {
        if (!(number > 0) || Double.isInfinite(number)) {
            throw new IllegalArgumentException(what + ": " + number + ", expected a number above 0");
        }
    }
}
