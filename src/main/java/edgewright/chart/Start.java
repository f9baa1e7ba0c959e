package edgewright.chart;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * Where a designer wants the rounds to be started. Starting on opposite sides in turn keeps the woven ends apart. Source:
 * common practice, no source.
 *
 * @param column the fabric column: the stitch of the base round that it stands over, counted from 1 at the corner just
 *     turned; it lies in the stitches from the corner or in the first repeat. Empty if the program is to find it
 * @param odd the side of rounds 1, 3, 5 and so on
 * @param even the side of rounds 2, 4, 6 and so on
 */
public record Start(OptionalInt column, Side odd, Side even, Extras extras) {
    /** A column that is found, and sides in turn from the top. */
    public static final Start DEFAULT = inTurn(Side.FIRST);

    public Start {
        Objects.requireNonNull(odd);
        Objects.requireNonNull(even);
        Objects.requireNonNull(extras);
        if (column.isPresent() && column.getAsInt() < 1) {
            throw new IllegalArgumentException("start column " + column.getAsInt() + ": expected 1 or more");
        }
    }

    /** A start with no unknown members. */
    public Start(OptionalInt column, Side odd, Side even) {
        this(column, odd, even, Extras.NONE);
    }

    /** Every round on the same side, in a column that is found. */
    public static Start always(Side side) {
        return new Start(OptionalInt.empty(), side, side);
    }

    /** Round 1 on this side, round 2 on the opposite one, and so on in turn, in a column that is found. */
    public static Start inTurn(Side first) {
        return new Start(OptionalInt.empty(), first, first.opposite());
    }

    /** The side on which this round is started. */
    public Side of(int round) {
        return round % 2 == 0 ? even : odd;
    }

    /** The same sides with another column; empty lets it be found. */
    public Start withColumn(OptionalInt other) {
        return new Start(other, odd, even, extras);
    }

    /** The same column on other sides. */
    public Start withSides(Side newOdd, Side newEven) {
        return new Start(column, newOdd, newEven, extras);
    }

    /** This start with a column that these sides have: one past its first repeat comes back to the end of that repeat. */
    Start on(BorderShape border) {
        return column.isPresent() && column.getAsInt() > border.lastStart()
                ? withColumn(OptionalInt.of(border.lastStart()))
                : this;
    }
}
