package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Stitch;
import edgewright.desk.work.Workbench;
import edgewright.draw.grid.Direction;
import java.util.List;

/** The cursor on its way from cell to cell of a canvas, and the stitches worked on it. */
final class CanvasWalk {
    private final ChartCanvas canvas;

    CanvasWalk(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    /** Goes one cell that way as it is seen. The diagonal is stepped over, and round the corner where nothing lies beyond. */
    void go(Direction heading) {
        CanvasSteps.next(canvas.cells(), canvas.standing(), heading, this::isStitch)
                .ifPresent(canvas::standAndShow);
    }

    /** Goes one cell that way, round the corner too, and marks what lies between there and where marking began. */
    void mark(Direction heading) {
        GridCell from = canvas.standing();
        CanvasSteps.next(canvas.cells(), from, heading, this::isStitch).ifPresent(to -> {
            canvas.standAndShow(to);
            canvas.marking().extend(from, to);
        });
    }

    /** Goes one cell that way with the tool that is down, or with what is carried. */
    void draw(Direction heading) {
        CanvasSteps.next(canvas.cells(), canvas.standing(), heading, this::isStitch)
                .ifPresent(to -> {
                    canvas.standInQuietly(to);
                    canvas.tools().over(List.of(to));
                    canvas.standAndShow(to);
                });
    }

    /** Goes to the last cell of this round that way along the arm: back to its start if negative. */
    void goToEnd(int way) {
        canvas.standAndShow(CanvasSteps.end(canvas.cells(), canvas.standing(), way, this::isStitch));
    }

    /**
     * Works a stitch where the cursor stands.
     *
     * @param onwards 1 for the cursor to go on to the next stitch in working order, -1 to go back before the stitch is worked, 0
     *     to stay; it stays where no more are drawn
     */
    void work(Stitch stitch, int onwards) {
        Workbench bench = canvas.bench();
        if (onwards < 0) {
            along(-1);
        }
        bench.work(canvas.toolbox().underMirrors(bench.cursor()), stitch);
        if (onwards > 0) {
            along(1);
        }
    }

    private void along(int way) {
        CanvasSteps.along(canvas.cells(), canvas.standing(), way, this::isStitch)
                .ifPresent(canvas::standAndShow);
    }

    private boolean isStitch(GridCell cell) {
        return canvas.placeIn(cell).isPresent();
    }
}
