package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Where the frames of the cursor are seen on the canvas. */
final class CursorFrames {
    /** How far a frame reaches beyond its cell. */
    private static final int WIDTH_PX = 4;

    private final ChartCanvas canvas;
    private List<GridCell> seen = List.of();

    CursorFrames(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    /**
     * What the frames cover from now on, in the cursor's own cell and in those that show the same stitch
     * or a mirror image of it, and what they covered
     * until now.
     */
    List<Rectangle> moved() {
        List<GridCell> now = twins();
        now.add(canvas.standing());
        List<Rectangle> covered = Stream.concat(seen.stream(), now.stream())
                .map(cell -> around(canvas.boundsOf(cell)))
                .toList();
        seen = now;
        return covered;
    }

    /** The cells that show the stitch at the cursor or one of its mirror images. */
    List<GridCell> twins() {
        List<GridCell> cells = new ArrayList<>();
        canvas.toolbox()
                .symmetry()
                .images(canvas.bench().chart(), canvas.bench().cursor())
                .forEach(place -> cells.addAll(canvas.cells().cellsOf(place)));
        return cells;
    }

    /** What a frame round a cell that lies there covers. */
    static Rectangle around(Rectangle cell) {
        Rectangle area = new Rectangle(cell);
        area.grow(WIDTH_PX, WIDTH_PX);
        return area;
    }
}
