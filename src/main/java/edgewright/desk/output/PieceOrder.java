package edgewright.desk.output;

import edgewright.chart.HookHand;
import edgewright.fit.PatternSize;
import java.util.Objects;

/**
 * For which piece a pattern is asked for.
 *
 * @param piece with its counts
 * @param hand that holds the hook
 */
public record PieceOrder(PatternSize piece, HookHand hand) {
    public PieceOrder {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(hand);
    }
}
