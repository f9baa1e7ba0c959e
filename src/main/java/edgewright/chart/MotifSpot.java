package edgewright.chart;

/**
 * Where a {@link Motif} lies: the stitch of its innermost round that is worked first. It need not be on the border, since a motif
 * may reach beyond it. A motif that goes round a corner lies round the one at the end of the side, whatever the column.
 *
 * @param round of its innermost round, counted outwards; charted ones from 1
 * @param column the fabric column of its first stitch, see {@link SidePlace#fabricColumn}
 */
public record MotifSpot(Side side, int round, int column) {
    /** The spot of a motif that begins with this stitch. */
    public static MotifSpot at(Side side, SidePlace first) {
        return new MotifSpot(side, first.round(), first.fabricColumn());
    }

    /** So many rounds out and columns on, or in and back. */
    public MotifSpot moved(int rounds, int columns) {
        return new MotifSpot(side, round + rounds, column + columns);
    }
}
