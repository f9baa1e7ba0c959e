package edgewright.draw.technique;

import static edgewright.draw.technique.FigureYarn.DARK;
import static edgewright.draw.technique.FigureYarn.LIGHT;
import static edgewright.draw.technique.FigureYarn.TAKEN;

/**
 * The figure of a base round along the ends of rows, two of them of the base stitch, one twice and one three times as high. Only
 * the last stitch is still to be worked.
 */
final class RowEndFigure {
    private static final double EDGE = -0.2;
    private static final double TOP = EDGE + 1.15;
    private static final double FROM = -3.5;

    /** From stitch to stitch along a row, which here goes down. */
    private static final double DOWN = 0.8;

    /** How many stitches of each row are seen. */
    private static final int DEEP = 2;

    /** How far a row lies from the line between it and the next. */
    private static final double GAP = 0.05;

    private static final double LOWEST = EDGE - DEEP * DOWN;

    /** How deep the foot of a stitch lies: it goes round the stitch at the end of the row. */
    private static final double UNDER = 0.62;

    /** How deep the strand at the end of a row lies. */
    private static final double STRAND = EDGE - 0.2;

    private static final int[] HEIGHTS = {1, 1, 2, 3};

    /** The last stitch that is worked. */
    private static final double LAST = 2;

    private final FigureBoard board;
    private final Fabric fabric;

    RowEndFigure(FigureBoard board) {
        this.board = board;
        this.fabric = new Fabric(board);
    }

    void draw() {
        FigureBoard loop = board.at(LAST + 0.4, TOP);
        loop.strand(LIGHT, "0 0, 0.1 0.3, 0.3 0.45, 0.6 0.4");
        board.ball(LIGHT, LAST + 0.95, TOP + 0.5);
        board.ground(LIGHT, FROM, EDGE, LAST + 0.4, TOP + 0.15);
        double from = FROM;
        for (int i = 0; i < HEIGHTS.length; i++) {
            board.ground(i % 2 == 0 ? DARK : LIGHT, from + GAP, LOWEST, from + HEIGHTS[i] - GAP, EDGE);
            row(from, HEIGHTS[i]);
            from += HEIGHTS[i];
        }
        board.cropBelow(LOWEST);
        strandAtEnd(-FROM - 3, -FROM);
        fabric.posts(LIGHT, -3, LAST, EDGE - UNDER, TOP);
        loop.strand(LIGHT, "0 0, 0.2 -0.4, 0.5 -1.1, 0.45 -1.75");
        board.tool(Tools.hook(LAST + 1.2, EDGE + 0.4, 66, 2.1, 0.34));
        strandAtEnd(LAST + 0.65, -FROM);
        loop.strand(LIGHT, "0 0, -0.02 -0.5, 0.15 -1.35, 0.45 -1.78");
        fabric.row(LIGHT, -3, LAST, TOP);
        board.cropAcross(FROM, -FROM);
        signs();
    }

    /** The strand that the hook goes under, at the end of the highest row. */
    private void strandAtEnd(double from, double to) {
        board.strand(TAKEN, from + 0.1, STRAND, (from + to) / 2, STRAND + 0.02, to - 0.12, STRAND);
    }

    private void signs() {
        double from = FROM;
        for (int height : HEIGHTS) {
            board.bracket(from + 0.08, from + height - 0.08, LOWEST - 0.25);
            board.count(height, from + height / 2.0, LOWEST - 0.25);
            from += height;
        }
    }

    /** A row whose stitches lie on their side, parted from the next by the line between them. */
    private void row(double from, int height) {
        FigureBoard lying = board.turned(from + GAP, EDGE, 90);
        for (int down = DEEP - 1; down >= 0; down--) {
            Fabric.tallPost(lying.at(down * DOWN + 0.42, 0), DARK, height - 2 * GAP);
        }
    }
}
