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
        stitches();
        boolean standing = join == Join.STANDING;
        double taken = standing ? first + 1 : first;
        fabric.row(LIGHT, last - 2, last - 1, HIGH);
        if (standing) {
            fabric.row(LIGHT, first, first, HIGH);
        }
        fabric.back(LIGHT, last, HIGH);
        board.tool(Tools.needle(last - 0.1, HIGH - 0.3, 238, 2.45, 0.24));
        fabric.front(LIGHT, last, HIGH);
        board.at(last, HIGH)
                .strand(
                        TAKEN,
                        standing
                                ? "0.4 0, 0.58 -0.26, 1.1 -0.48, 1.8 -0.4, 2.05 0, 2.12 0.5, 2.2 1.1, 1.8 1.62, 1.2 1.66, 1.08 1.5"
                                : "0.4 0, 0.58 -0.26, 0.85 -0.48, 1.3 -0.4, 1.55 0, 1.62 0.5, 1.7 1.1, 1.5 1.62, 1.2 1.66, 1.08 1.5");
        fabric.row(LIGHT, taken, first + 2, HIGH);
        board.cropAcross(FROM, TO);
        board.number(1, last - 0.12, HIGH - 0.66);
        board.number(2, taken + 0.6, HIGH + 0.6);
        board.number(3, last - 0.3, HIGH + 0.6);
    }

    void slip() {
        stitches();
        fabric.row(LIGHT, last - 2, last, HIGH);
        FigureBoard loop = board.at(last + 0.35, HIGH);
        loop.strand(LIGHT, "0 0, -0.1 0.6, -0.8 0.85, -2.1 0.95");
        loop.strand(LIGHT, "0 0, 0.3 0.12, 0.5 -0.2, 0.45 -0.72");
        board.tool(Tools.hook(first + 0.3, HIGH + 0.85, 60, 3.5, 0.36));
        loop.strand(LIGHT, "0 0, 0.02 -0.25, 0.15 -0.6, 0.45 -0.75");
        fabric.row(TAKEN, first, first, HIGH);
        fabric.row(LIGHT, first + 1, first + 2, HIGH);
        board.cropAcross(FROM, TO);
        board.number(1, first + 0.75, HIGH + 0.68);
        board.number(2, last - 0.1, HIGH - 0.72);
    }

    /** All but the loops on top of the round. */
    private void stitches() {
        // The first stitch of a round that begins at a corner goes into the last chain below, as the joining chain
        // does.
        double shift = atCorner ? 0.8 : 0;
        double nextBelow = atCorner ? -1 + shift : 0;
        board.ground(DARK, FROM - 0.05, LOW - 0.95, TO + 0.05, LOW + 0.15);
        board.ground(LIGHT, FROM - 0.05, LOW + 0.2, atCorner ? -1.75 : last + 0.3, HIGH + 0.15);
        board.ground(LIGHT, first - 0.3, LOW + 0.2, TO + 0.05, HIGH + 0.15);
        fabric.posts(DARK, nextBelow - 2, atCorner ? -1 : 3, LOW - 1.05, LOW);
        if (atCorner) {
            fabric.posts(DARK, 1 + shift, 2 + shift, LOW - 1.05, LOW);
        }
        fabric.backs(DARK, nextBelow - 2, nextBelow + 3, LOW);
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
        fabric.fronts(DARK, nextBelow - 2, nextBelow + 3, LOW);
        board.cropBelow(LOW - 0.9);
    }
}
