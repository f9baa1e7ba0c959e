package edgewright.chart;

/** One of the two loops at the top of a stitch, as the maker looks at them with the right side of the work in front. */
public enum StitchLoop {
    /** The loop that is nearer. */
    FRONT,
    /** The loop that is farther away. */
    BACK
}
