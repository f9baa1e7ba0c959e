package edgewright.assist.effort;

/**
 * How fast somebody works.
 *
 * @param stitchesAMinute of those that are worked into the stitch below, and of chains; more than 0
 * @param longStitchesAMinute of those that drop to a round below; more than 0
 */
public record Pace(double stitchesAMinute, double longStitchesAMinute) {
    /** A steady maker; common practice, no source. */
    public static final Pace STEADY = new Pace(20, 14);

    /** @throws IllegalArgumentException if nothing is ever done */
    public Pace {
        if (!(stitchesAMinute > 0) || !(longStitchesAMinute > 0)) {
            throw new IllegalArgumentException("a pace of " + stitchesAMinute + " and " + longStitchesAMinute
                    + " stitches a minute: expected more than 0");
        }
    }
}
