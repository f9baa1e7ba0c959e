package edgewright.draw.technique;

import edgewright.chart.HookHand;
import edgewright.chart.Technique;
import edgewright.draw.marks.Drawing;
import edgewright.draw.paint.ColourMode;
import edgewright.words.technique.ShownTechnique;

/** The figures of techniques, all equally wide. */
public final class TechniqueFigure {
    /** How wide every figure is. */
    public static final double WIDTH_MM = FigureBoard.WIDTH_MM;

    /** The heights of the figures of a corner, for each number of chains. */
    private static final double[] OF_CORNER = {0, 51, 44.5, 48};

    private static final double[] OF_START = {0, 42, 44.5, 48};

    /**
     * The sheet of a figure.
     *
     * @param zeroMm how far under its upper edge the zero of the figure lies
     * @param stitchMm the width of a stitch
     */
    private record Sheet(double heightMm, double zeroMm, double stitchMm) {}

    private TechniqueFigure() {}

    /**
     * The figure of a technique.
     *
     * @param hand that holds the hook; the figure for the left hand is the mirror image of that for the right, but for numbers
     * @param title what it shows, in a few words
     * @param description what it shows, for those who do not see it
     */
    public static Drawing of(ShownTechnique shown, HookHand hand, ColourMode mode, String title, String description) {
        Sheet sheet = sheet(shown);
        FigureBoard board =
                FigureBoard.of(sheet.heightMm(), sheet.zeroMm(), sheet.stitchMm(), hand == HookHand.RIGHT, mode);
        draw(shown, board);
        return board.drawing(title, description);
    }

    private static Sheet sheet(ShownTechnique shown) {
        return switch (shown.kind()) {
            case ALONG_STITCHES, BACK_LOOP -> new Sheet(40, 17, 10);
            case ROW_ENDS -> new Sheet(43.5, 19.5, 10);
            case START_AT_CORNER -> new Sheet(OF_START[shown.chains()], 24, 9.5);
            case START_ABOVE_MARKER -> new Sheet(48.5, 25, 10);
            case LONG -> new Sheet(50, 22.5, 10);
            case CORNER -> new Sheet(OF_CORNER[shown.chains()], 24, 9.5);
            case TWO_IN_ONE -> new Sheet(39, 17, 10);
            case TWO_TOGETHER -> new Sheet(38, 17, 9.2);
            case INVISIBLE_JOIN -> new Sheet(54, 18.4, 10.6);
            case SLIP_JOIN -> new Sheet(47, 17.5, 11.4);
            case LAYERS -> new Sheet(43.5, 19.5, 10);
        };
    }

    private static void startAtCorner(ShownTechnique shown, FigureBoard board) {
        new CornerFigures(board.turned(-1.9, 0.35, -90), shown.chains(), shown.takesBothLoops(), 2.7, 5.9)
                .start(shown.join());
        if (shown.join() == Technique.Join.STANDING) {
            Fabric.knotOnHook(board.at(-3.2, 0.15));
            board.number(1, -3.2, 0.8);
        }
    }

    private static void draw(ShownTechnique shown, FigureBoard board) {
        switch (shown.kind()) {
            case ALONG_STITCHES -> new StitchFigures(board).alongStitches();
            case ROW_ENDS -> new RowEndFigure(board).draw();
            case START_AT_CORNER -> startAtCorner(shown, board);
            case START_ABOVE_MARKER -> new JoinFigures(board).aboveMarker(shown.join());
            case BACK_LOOP -> new StitchFigures(board).backLoop();
            case LONG -> new StitchFigures(board).longStitch();
            case CORNER ->
                new CornerFigures(board.at(1.9, 0.35), shown.chains(), shown.takesBothLoops(), 5.9, 3.1).corner();
            case TWO_IN_ONE -> new ChangeFigures(board, shown.takesBothLoops()).twoInOne();
            case TWO_TOGETHER -> new ChangeFigures(board, shown.takesBothLoops()).twoTogether();
            case INVISIBLE_JOIN ->
                new CloseFigures(board.at(-0.5, 0), shown.join(), shown.ends() == ShownTechnique.Ends.CORNER)
                        .invisible();
            case SLIP_JOIN ->
                new CloseFigures(board.at(-0.5, 0), shown.join(), shown.ends() == ShownTechnique.Ends.CORNER).slip();
            case LAYERS -> new JoinFigures(board).layers();
        }
    }
}
