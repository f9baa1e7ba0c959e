package edgewright.draw.technique;

import static edgewright.draw.technique.FigureYarn.DARK;
import static edgewright.draw.technique.FigureYarn.LIGHT;
import static edgewright.draw.technique.FigureYarn.SEAM;
import static edgewright.draw.technique.FigureYarn.TAKEN;

import edgewright.chart.Technique.Join;

/** The figures of how a round begins along a side, and of how two layers are joined. */
final class JoinFigures {
    private static final double EDGE = 3.45;

    /** From which stitch on the front layer is left out, so that the back layer is seen behind it. */
    private static final int FRONT_ENDS = 2;

    private final FigureBoard board;
    private final Fabric fabric;

    JoinFigures(FigureBoard board) {
        this.board = board;
        this.fabric = new Fabric(board);
    }

    void aboveMarker(Join join) {
        double low = -1.05;
        double middle = low + Fabric.ROW;
        double high = middle + Fabric.ROW;
        board.at(2.4, high).strand(LIGHT, "0 0, 0.25 -0.12, 0.55 -0.1, 0.75 0.2");
        board.ball(LIGHT, 2.95, high + 0.35);
        board.ground(LIGHT, -EDGE, low - 1, EDGE, low + 0.15);
        board.ground(DARK, -EDGE, low + 0.2, EDGE, middle + 0.15);
        board.ground(LIGHT, 0.75, middle + 0.2, 2.4, high + 0.15);
        fabric.posts(LIGHT, -3, 3, low - 1.1, low);
        fabric.backs(LIGHT, -3, 3, low);
        fabric.posts(DARK, -3, 3, low - 0.02, middle);
        marker(low);
        fabric.fronts(LIGHT, -3, 3, low);
        if (join != Join.STANDING) {
            board.at(0, middle).tail(LIGHT, "0 0.1, -0.15 0.6, -0.5 0.85, -1 0.75");
        }
        fabric.backs(DARK, -3, -1, middle);
        fabric.back(TAKEN, 0, middle);
        fabric.backs(DARK, 1, 3, middle);
        fabric.posts(LIGHT, 1, 2, middle - 0.02, high);
        Fabric.toCome(board.at(-0.1, middle + 0.05), Fabric.ROW - 0.05);
        begun(join, middle, high);
        fabric.fronts(DARK, -3, 3, middle);
        fabric.row(LIGHT, 1, 2, high);
        board.cropBelow(low - 0.95);
        board.cropAcross(-EDGE, EDGE);
        board.arrow(0, low + 0.1, 0, middle - 0.45);
        board.number(1, -0.62, low - 0.55);
        boolean standing = join == Join.STANDING;
        if (!standing) {
            board.number(2, -0.75, middle + 0.35);
        }
        board.number(standing ? 2 : 3, 1, high + 0.75);
        board.arrow(-3, high, -2, high, -1, high);
        board.number(standing ? 3 : 4, -3, high);
    }

    /** A marker that is closed round the front loop of the stitch in the middle. */
    private void marker(double out) {
        board.filled(TAKEN, Tools.marker(0, out - 0.4, 0.46, 0.62));
    }

    /** What stands before the first stitch, in the stitch above the marker. */
    private void begun(Join join, double middle, double high) {
        switch (join) {
            case CHAIN -> Fabric.chain(board, 0.02, middle + 0.05, 0.42, high);
            case SLIP -> {
                board.at(0, middle).ring(LIGHT, 0.15, "-0.3 0.3, 0 0.44, 0.3 0.3, 0 -0.02");
                Fabric.chain(board, 0.1, middle + 0.3, 0.42, high);
            }
            case STANDING -> {
                board.at(0.4, high).tail(LIGHT, "0.05 -0.02, -0.05 0.3, -0.3 0.55, -0.75 0.6");
                Fabric.knot(board.at(0.4, high));
            }
        }
    }

    void layers() {
        double front = -0.85;
        double back = front + 0.95;
        double seam = (front + back) / 2;
        board.ground(DARK, -EDGE, front - 1.3, EDGE, back + 0.15);
        for (int i = 3; i >= FRONT_ENDS; i--) {
            fabric.post(DARK, i, front - 1.4, i, back);
        }
        board.ground(LIGHT, -EDGE, front - 1.3, FRONT_ENDS - 0.5, front + 0.15);
        FigureBoard loop = board.at(-0.6, seam);
        loop.strand(SEAM, "0 0, 0.3 0.6, 0.9 1.2, 1.7 1.5, 2.6 1.45");
        fabric.posts(LIGHT, -3, FRONT_ENDS - 1, front - 1.4, front);
        board.cropBelow(front - 1.3);
        // The back layer was worked from its other side, so the points of its Vs lie the other way.
        for (int i = 3; i >= -3; i--) {
            Fabric.back(board.at(i, back), DARK, -1);
        }
        fabric.fronts(LIGHT, -3, 0, front);
        loop.strand(SEAM, "0 0, 0.3 0.1, 0.48 -0.5, 0.25 -1.05");
        board.tool(Tools.hook(0.55, back + 0.7, 62, 3.4, 0.36));
        for (int i = 3; i >= -3; i--) {
            Fabric.front(board.at(i, back), i == 0 ? TAKEN : DARK, -1);
        }
        fabric.backs(LIGHT, -3, -1, front);
        fabric.back(TAKEN, 0, front);
        fabric.row(LIGHT, 1, FRONT_ENDS - 1, front);
        for (int i = -3; i <= -1; i++) {
            fabric.row(SEAM, i, i, seam);
        }
        loop.strand(SEAM, "0 0, -0.02 -0.3, 0.02 -0.72, 0.25 -1.08");
        board.ball(SEAM, 2.3, seam + 1.5);
        board.cropAcross(-EDGE, EDGE);
        board.number(1, 0.95, back + 0.72);
        board.number(2, -2, back + 0.75);
    }
}
