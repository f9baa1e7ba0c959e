package edgewright.chart;

/** Where a long stitch drops to: two rounds below, in its own fabric column. */
public sealed interface Landing {
    /** In the front loop of a stitch of the same side; round 0 is the base round. */
    record InStitch(Place place) implements Landing {}

    /** In a corner chain of that round: the second stitch of a side and the last but one do. */
    record InCornerChain(int round, CornerEnd corner) implements Landing {}

    /** Round 1 has no round two below. */
    record NoRoundBelow() implements Landing {}

    /** The first or the last stitch of a side: under the corner chain it stands on there is nothing of this side. */
    record PastCorner(CornerEnd corner) implements Landing {}
}
