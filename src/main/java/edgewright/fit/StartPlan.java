package edgewright.fit;

import edgewright.chart.Side;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * Where a designer wants the rounds to be started.
 *
 * @param column the fabric column: the stitch of the base round that it stands over, counted from 1 at the corner just
 *     turned; it lies in the stitches from the corner or in the first repeat. Empty if it is found; see {@link
 *     Starts#bestColumn}
 */
public record StartPlan(OptionalInt column, StartSides sides) {
    /** A column that is found, and sides in turn from the top. */
    public static final StartPlan DEFAULT = new StartPlan(OptionalInt.empty(), StartSides.inTurn(Side.TOP));

    public StartPlan {
        Objects.requireNonNull(sides);
        if (column.isPresent() && column.getAsInt() < 1) {
            throw new IllegalArgumentException("column " + column.getAsInt() + ": expected 1 or more");
        }
    }
}
