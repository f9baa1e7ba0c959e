package edgewright.draw.technique;

import static edgewright.draw.technique.FigureYarn.DARK;
import static edgewright.draw.technique.FigureYarn.LIGHT;
import static edgewright.draw.technique.FigureYarn.TAKEN;

import edgewright.chart.Technique.Join;

/**
 * The figures of how a round is closed. Its end comes from the side of what was worked, its beginning lies ahead. A corner
 * between them is drawn as if the two sides were one.
 */
final class CloseFigures {
    private static final double LOW = -1.1;
    private static final double HIGH = LOW + Fabric.ROW;
    /** How much of the fabric is seen under the top of the round that is closed with a needle. */
    private static final double SHOWN = 1.35;

    /** How far below the way of the needle the closed round is drawn. */
    private static final double CLOSED = 2.05;

    private static final double FROM = -2.35;
    private static final double TO = 3.25;

    private final FigureBoard board;
    private final Fabric fabric;
    private final Join join;
    private final boolean atCorner;
    /** Where the last stitch or chain of the round has its top. */
    private final double last;
    /** Where the first stitch of the round has its top. */
    private final double first;

    /** @param atCorner whether the round ends with the chains of a corner, not with a stitch */
    CloseFigures(FigureBoard board, Join join, boolean atCorner) {
        this.board = board;
        this.fabric = new Fabric(board);
        this.join = join;
        this.atCorner = atCorner;
        this.last = join == Join.STANDING ? 0 : -0.25;
        this.first = join == Join.STANDING ? 1 : 1.25;
    }

    void invisible() {
        threaded();
        new CloseFigures(board.at(0, -CLOSED), join, atCorner).closed();
        board.arrow(FROM + 0.3, HIGH - SHOWN - 0.08, FROM + 0.3, HIGH - CLOSED + 0.3);
    }

    /** The way of the needle with the end of the yarn. */
    private void threaded() {
        stitches(HIGH - SHOWN);
        boolean standing = join == Join.STANDING;
        double taken = standing ? first + 1 : first;
        fabric.row(LIGHT, last - 2, last - 1, HIGH);
        if (standing) {
            fabric.row(LIGHT, first, first, HIGH);
        }
        fabric.back(LIGHT, last, HIGH);
        board.tool(Tools.needle(last - 0.1, HIGH - 0.3, 245, 2, 0.24));
        fabric.front(LIGHT, last, HIGH);
        FigureBoard end = board.at(taken, HIGH);
        double from = last + 0.42 - taken;
        end.strand(TAKEN, from, 0, from + 0.15, -0.32, -0.55, -0.52, -0.12, -0.42, 0.04, 0);
        end.strand(TAKEN, 0.04, 0, 0.12, 0.5, 0.1, 0.95, -0.3, 1.3, from + 0.5, 1.36, from + 0.2, 1.12);
        fabric.row(LIGHT, taken, first + 2, HIGH);
        board.cropAcross(FROM, TO);
        board.arrow(last + 0.75, HIGH - 0.86, taken - 0.3, HIGH - 0.86, taken - 0.02, HIGH - 0.62);
        board.arrow(last - 0.12, HIGH + 1.4, last - 0.42, HIGH + 0.95, last - 0.42, HIGH + 0.5);
        board.number(1, last + 0.35, HIGH - 0.62);
        board.number(2, taken + 0.62, HIGH + 0.55);
        board.number(3, last - 0.85, HIGH + 0.95);
    }

    /** The closed round, its new loop drawn up to the size of a stitch. */
    private void closed() {
        stitches(HIGH - SHOWN + 0.25);
        fabric.row(LIGHT, last - 2, last, HIGH);
        boolean standing = join == Join.STANDING;
        FigureBoard loop = board.at((last + first + (standing ? 1 : 0)) / 2, HIGH);
        Fabric.back(loop, TAKEN, standing ? 1 : 0.95);
        Fabric.front(loop, TAKEN, standing ? 1 : 0.95);
        fabric.row(LIGHT, standing ? first + 1 : first, first + 2, HIGH);
        board.cropAcross(FROM, TO);
    }

    void slip() {
        stitches(LOW - 0.9);
        fabric.row(LIGHT, last - 2, last, HIGH);
        FigureBoard loop = board.at(last + 0.35, HIGH);
        board.ball(LIGHT, last - 1.4, HIGH + 0.85);
        loop.strand(LIGHT, "0 0, -0.1 0.5, -0.6 0.7, -1.35 0.7");
        loop.strand(LIGHT, "0 0, 0.3 0.12, 0.5 -0.2, 0.45 -0.72");
        board.tool(Tools.hook(first + 0.3, HIGH + 0.85, 60, 3.5, 0.36));
        loop.strand(LIGHT, "0 0, 0.02 -0.25, 0.15 -0.6, 0.45 -0.75");
        fabric.row(TAKEN, first, first, HIGH);
        fabric.row(LIGHT, first + 1, first + 2, HIGH);
        board.cropAcross(FROM, TO);
        board.number(1, first + 0.75, HIGH + 0.68);
        board.number(2, last - 0.1, HIGH - 0.72);
    }

    /**
     * All but the loops on top of the round.
     *
     * @param lowest where what is seen of the fabric ends
     */
    private void stitches(double lowest) {
        // The first stitch of a round that begins at a corner goes into the last chain below, as the joining chain
        // does.
        double shift = atCorner ? 0.8 : 0;
        double nextBelow = atCorner ? -1 + shift : 0;
        boolean below = lowest < LOW;
        if (below) {
            board.ground(DARK, FROM - 0.05, Math.max(lowest, LOW - 0.95), TO + 0.05, LOW + 0.15);
        }
        board.ground(LIGHT, FROM - 0.05, LOW + 0.2, atCorner ? -1.75 : last + 0.3, HIGH + 0.15);
        board.ground(LIGHT, first - 0.3, LOW + 0.2, TO + 0.05, HIGH + 0.15);
        if (lowest < LOW - 0.5) {
            fabric.posts(DARK, nextBelow - 2, atCorner ? -1 : 3, LOW - 1.05, LOW);
            if (atCorner) {
                fabric.posts(DARK, 1 + shift, 2 + shift, LOW - 1.05, LOW);
            }
        }
        if (below) {
            fabric.backs(DARK, nextBelow - 2, nextBelow + 3, LOW);
        }
        for (int i = -2; i <= (atCorner ? -2 : 0); i++) {
            fabric.post(LIGHT, i + last / 2, LOW - 0.02, i + last, HIGH);
        }
        if (join != Join.STANDING) {
            Fabric.chain(board, 0.2 + 0.3 * shift, LOW + 0.05, 0.5 + 0.15 * shift, HIGH);
        }
        for (int i = 1; i <= 3; i++) {
            double foot = !atCorner ? i : i == 1 ? 1 : i - 1 + shift;
            fabric.post(LIGHT, foot, LOW - 0.02, first + i - 1, HIGH);
        }
        if (below) {
            fabric.fronts(DARK, nextBelow - 2, nextBelow + 3, LOW);
        }
        board.cropBelow(lowest);
    }
}
