package edgewright.draw.technique;

import static edgewright.draw.technique.FigureYarn.DARK;
import static edgewright.draw.technique.FigureYarn.LIGHT;

/** The figure of a base round along the ends of rows, two of them of the base stitch, one twice and one three times as high. */
final class RowEndFigure {
    private static final double EDGE = -0.35;
    private static final double TOP = EDGE + 1.15;
    private static final double FROM = -3.5;

    /** From stitch to stitch along a row, which here goes down. */
    private static final double DOWN = 0.8;

    private static final int[] HEIGHTS = {1, 1, 2, 3};

    private final FigureBoard board;
    private final Fabric fabric;

    RowEndFigure(FigureBoard board) {
        this.board = board;
        this.fabric = new Fabric(board);
    }

    void draw() {
        board.ground(DARK, FROM, EDGE - 1.6, -FROM, EDGE - 0.1);
        board.ground(LIGHT, FROM, EDGE + 0.1, -FROM, TOP + 0.15);
        double from = FROM;
        for (int height : HEIGHTS) {
            row(from, height);
            from += height;
        }
        board.cropBelow(EDGE - 1.5);
        fabric.posts(LIGHT, -3, 3, EDGE - 0.62, TOP);
        fabric.row(LIGHT, -3, 3, TOP);
        board.cropAcross(FROM, -FROM);
        from = FROM;
        for (int height : HEIGHTS) {
            board.bracket(from + 0.1, from + height - 0.1, TOP + 0.5);
            board.number(height, from + height / 2.0, TOP + 0.92);
            from += height;
        }
    }

    /** A row whose stitches lie on their side: its top is the column of Vs where the next row begins. */
    private void row(double from, int height) {
        FigureBoard lying = board.turned(from, EDGE, 90);
        for (int down = 1; down >= 0; down--) {
            Fabric.tallPost(lying.at(down * DOWN + 0.42, 0), DARK, height);
        }
        for (int down = 1; down >= 0; down--) {
            FigureBoard at = board.turned(from + height, EDGE - down * DOWN - 0.5, 90);
            Fabric.back(at, DARK, DOWN);
            Fabric.front(at, DARK, DOWN);
        }
    }
}
