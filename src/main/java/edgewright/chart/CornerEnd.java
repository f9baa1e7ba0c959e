package edgewright.chart;

/** Which of the two corners of a side is meant. */
public enum CornerEnd {
    /** The corner just turned, before the first stitch of the side. */
    START,
    /** The corner that is worked next, after the last stitch of the side. */
    NEXT
}
