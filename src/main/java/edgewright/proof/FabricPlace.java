package edgewright.proof;

import edgewright.chart.Side;
import edgewright.hands.FabricStitch;

/**
 * A place on the fabric of the front.
 *
 * @param round from 1; 0 is the base round
 * @param stitch which stitch of that side and round, from 1 at the corner just turned. The corner chains before the side are 0, those
 *     after it one more than its last stitch
 */
public record FabricPlace(int round, Side side, int stitch) {
    /** Where something was made. */
    static FabricPlace of(FabricStitch made) {
        return new FabricPlace(made.round(), made.side(), made.number());
    }
}
