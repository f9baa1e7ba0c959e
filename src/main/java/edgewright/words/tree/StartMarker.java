package edgewright.words.tree;

import edgewright.chart.Side;
import java.util.Objects;

/**
 * A marker in a stitch of a round.
 *
 * @param side the side it is on
 * @param stitch counted from the corner just turned, with the corner chain as number 1
 */
public record StartMarker(Side side, int stitch) {
    public StartMarker {
        Objects.requireNonNull(side);
        if (stitch < 1) {
            throw new IllegalArgumentException("a marker in stitch " + stitch);
        }
    }
}
