package edgewright.draw.picture;

import edgewright.chart.GridCell;
import edgewright.chart.Section;
import edgewright.chart.Side;
import java.util.Optional;
import java.util.stream.Stream;

/** One of the two sides that meet in the drawn corner; each is drawn from the corner to its repeats. */
public enum Arm {
    /** The side that is worked up to the corner: its repeats, then its part to the corner. */
    INCOMING(Side.FIRST, Section.TO_CORNER),
    /** The side that is worked from the corner: its part from the corner, then its repeats. */
    OUTGOING(INCOMING.side.next(), Section.FROM_CORNER);

    private final Side side;
    private final Section atCorner;

    Arm(Side side, Section atCorner) {
        this.side = side;
        this.atCorner = atCorner;
    }

    /** The arm that is drawn as this side; empty for the sides that do not meet in the corner. */
    static Optional<Arm> of(Side side) {
        return Stream.of(values()).filter(arm -> arm.side == side).findFirst();
    }

    /**
     * Where a point of the arm lies on the squared paper.
     *
     * @param along from the corner of the base round along the arm, in cells
     * @param out from the inner edge of the base round away from the piece, in cells; negative for the piece's side
     */
    double x(double along, double out) {
        return this == INCOMING ? along : -out;
    }

    /** The other coordinate of the same point. */
    double y(double along, double out) {
        return this == INCOMING ? -out : along;
    }

    /** The cell of a fabric column, counted from 0 at the corner of the base round, in a round. */
    GridCell cell(int column, int round) {
        return new GridCell((int) x(column, round + 1), (int) y(column, round + 1));
    }

    /** The side of the piece it is drawn as, before it is rotated. */
    public Side side() {
        return side;
    }

    /** The section between its repeats and the corner. */
    public Section atCorner() {
        return atCorner;
    }
}
