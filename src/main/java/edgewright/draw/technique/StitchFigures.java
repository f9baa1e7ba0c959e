package edgewright.draw.technique;

import static edgewright.draw.technique.FigureYarn.DARK;
import static edgewright.draw.technique.FigureYarn.LIGHT;
import static edgewright.draw.technique.FigureYarn.TAKEN;

/** The figures of single stitches: a dark round below, a light one that is being worked. */
final class StitchFigures {
    /** Where what goes on beyond the figure is cut off, in stitches from its middle. */
    private static final double EDGE = 3.45;

    /** How deep the foot of a stitch lies that takes both loops, or a front loop, in front of it. */
    static final double UNDER = 0.4;

    private static final double LOW = -0.75;
    private static final double HIGH = LOW + Fabric.ROW;

    private final FigureBoard board;
    private final Fabric fabric;

    StitchFigures(FigureBoard board) {
        this.board = board;
        this.fabric = new Fabric(board);
    }

    void backLoop() {
        roundBelow();
        fabric.backs(DARK, -3, 0, LOW);
        fabric.posts(LIGHT, -3, -1, LOW - 0.02, HIGH);
        fabric.fronts(DARK, -3, 0, LOW);
        board.cropBelow(LOW - 1.3);
        FigureBoard loop = board.at(-0.6, HIGH);
        loop.strand(LIGHT, "0 0, 0.18 -0.35, 0.26 -0.95, 0.22 -1.5, 0.08 -1.75");
        board.tool(Tools.hook(0.62, LOW + 0.72, 42, 3.1, 0.36));
        loop.strand(LIGHT, "0 0, -0.06 -0.4, -0.06 -0.95, -0.04 -1.5, 0.08 -1.75");
        fabric.back(TAKEN, 0, LOW);
        fabric.row(DARK, 1, 3, LOW);
        fabric.row(LIGHT, -3, -1, HIGH);
        board.cropAcross(-EDGE, EDGE);
        board.number(1, 0.35, LOW + 1.2);
        board.pointer(-2, LOW - 1, -2, LOW - 0.2);
        board.number(2, -2, LOW - 1);
    }

    void alongStitches() {
        roundBelow();
        board.cropBelow(LOW - 1.3);
        FigureBoard loop = board.at(-0.6, HIGH);
        loop.strand(LIGHT, "0 0, 0.18 -0.35, 0.26 -0.95, 0.26 -1.5, 0.12 -1.87");
        board.tool(Tools.hook(0.45, LOW + 0.75, 56, 2.55, 0.36));
        fabric.row(DARK, -3, -1, LOW);
        fabric.row(TAKEN, 0, 0, LOW);
        fabric.row(DARK, 1, 3, LOW);
        fabric.posts(LIGHT, -3, -1, LOW - UNDER, HIGH);
        loop.strand(LIGHT, "0 0, -0.06 -0.4, -0.06 -0.95, -0.02 -1.55, 0.12 -1.87");
        fabric.row(LIGHT, -3, -1, HIGH);
        board.cropAcross(-EDGE, EDGE);
        board.number(1, 0.35, LOW + 1.2);
        board.number(2, -2, HIGH + 0.7);
    }

    /** The ground, the stitches below, and the yarn of the new round. */
    private void roundBelow() {
        yarnToBall(HIGH);
        board.ground(DARK, -EDGE, LOW - 1.3, EDGE, LOW + 0.15);
        board.ground(LIGHT, -EDGE, LOW + 0.2, -0.75, HIGH + 0.15);
        fabric.posts(DARK, -3, 3, LOW - 1.4, LOW);
        fabric.backs(DARK, 1, 3, LOW);
    }

    /** The yarn that leads from the last stitch to the ball, behind the work. */
    private void yarnToBall(double top) {
        board.at(-0.6, top).strand(LIGHT, "0 0, 0.4 0.25, 1.5 0.45, 2.9 0.5, 4.3 0.65");
    }

    void longStitch() {
        double low = -1.2;
        double middle = low + Fabric.ROW;
        double high = middle + Fabric.ROW;
        yarnToBall(high);
        board.ground(LIGHT, -EDGE, low - 0.95, EDGE, low + 0.15);
        board.ground(DARK, -EDGE, low + 0.2, EDGE, middle + 0.15);
        board.ground(LIGHT, -EDGE, middle + 0.2, -0.75, high + 0.15);
        fabric.posts(LIGHT, -3, 3, low - 1, low);
        fabric.backs(LIGHT, -3, 3, low);
        fabric.posts(DARK, -3, 3, low - 0.02, middle);
        fabric.backs(DARK, -3, 3, middle);
        fabric.post(LIGHT, -3, middle - 0.02, -3, high);
        fabric.post(LIGHT, -1, middle - 0.02, -1, high);
        fabric.fronts(DARK, -3, 3, middle);
        fabric.fronts(LIGHT, -3, -1, low);
        board.cropBelow(low - 0.95);
        longPost(-2, low, high);
        FigureBoard loop = board.at(-0.6, high);
        loop.strand(LIGHT, "0 0, 0.12 -0.5, 0.24 -1.72, 0.26 -2.67, 0.08 -3.14");
        board.tool(Tools.hook(0.2, low + 0.98, 64, 2.6, 0.36));
        fabric.front(TAKEN, 0, low);
        loop.strand(LIGHT, "0 0, -0.06 -0.5, -0.06 -1.9, -0.06 -2.7, 0.08 -3.14");
        fabric.fronts(LIGHT, 1, 3, low);
        fabric.row(LIGHT, -3, -1, high);
        board.cropAcross(-EDGE, EDGE);
        board.number(1, 0.72, low - 0.62);
        board.number(2, -2, middle - 0.3);
        board.pointer(0.55, middle + 0.95, 0.2, middle + 0.2);
        board.number(3, 0.55, middle + 0.95);
    }

    /** A long stitch from the front loop where it lands to its top, with the band of the yarn that was wound round the hook. */
    private void longPost(double a, double landing, double top) {
        fabric.post(LIGHT, a, landing - UNDER, a, top);
        board.at(a, top - 0.95).thick(LIGHT, 0.2, -0.33, -0.12, 0, 0.02, 0.33, 0.16);
    }
}
