package edgewright.fit;

import edgewright.chart.Side;

/**
 * The sides on which rounds are started. Starting on opposite sides in turn keeps the woven ends apart. Source: common
 * practice, no source.
 *
 * @param odd the side of rounds 1, 3, 5 and so on
 * @param even the side of rounds 2, 4, 6 and so on
 */
public record StartSides(Side odd, Side even) {
    /** Every round on the same side. */
    public static StartSides always(Side side) {
        return new StartSides(side, side);
    }

    /** Round 1 on this side, round 2 on the opposite one, and so on in turn. */
    public static StartSides inTurn(Side first) {
        return new StartSides(first, first.next().next());
    }

    /** The side on which this round is started. */
    public Side of(int round) {
        return round % 2 == 0 ? even : odd;
    }
}
