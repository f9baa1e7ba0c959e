package edgewright.chart;

/** Where a long stitch drops to, in its own fabric column; how far down is said by {@link Stitch#roundsDown}. */
public sealed interface Landing {
    /** In the front loop of a stitch of the same side; round 0 is the base round. */
    record InStitch(Place place) implements Landing {}

    /** In a corner chain of that round: of stitches that drop two rounds the second of a side and the last but one do. */
    record InCornerChain(int round, CornerEnd corner) implements Landing {}

    /** There are not so many rounds below, the base round counted. */
    record NoRoundBelow() implements Landing {}

    /** Too near to the end of a side: the column ends above in a corner chain, and under that there is nothing of this side. */
    record PastCorner(CornerEnd corner) implements Landing {}
}
