package edgewright.chart;

/** What a cell of the square grid holds. */
public sealed interface GridContent {
    /** A stitch of a side; round 0 is the base round. */
    record SideStitch(Side side, SidePlace place) implements GridContent {}

    /**
     * The group of corner chains of a round; round 0 is the base round.
     *
     * @param after the side that ends in this corner
     */
    record CornerChains(Side after, int round) implements GridContent {}

    /** The piece that the border goes round. */
    record Piece() implements GridContent {}
}
