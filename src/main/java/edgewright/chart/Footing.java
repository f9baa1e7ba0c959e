package edgewright.chart;

/** What a stitch stands on in the round directly below. */
public sealed interface Footing {
    /** It stands on a stitch of the same side; round 0 is the base round. */
    record OnStitch(Place place) implements Footing {}

    /** It stands on a chain of the corner group of that round: the first or the last stitch of a side does. */
    record OnCornerChain(int round, CornerEnd corner) implements Footing {}
}
