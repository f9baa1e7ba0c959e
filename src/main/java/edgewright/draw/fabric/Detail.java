package edgewright.draw.fabric;

/** How much of the yarn is drawn in worked fabric. Small stitches are drawn simply: what is finer than a dot only blurs. */
public enum Detail {
    /** Each strand in one colour on its shadow. */
    SIMPLE(8),
    /** Strands with light and shade. */
    STRANDS(18),
    /** The plies of the yarn too. */
    PLIES(Double.POSITIVE_INFINITY);

    private final double endsAtDots;

    Detail(double endsAtDots) {
        this.endsAtDots = endsAtDots;
    }

    /** What is seen of a stitch so many dots wide. */
    public static Detail ofDots(double dots) {
        for (Detail detail : values()) {
            if (dots < detail.endsAtDots) {
                return detail;
            }
        }
        return PLIES;
    }
}
