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
     * What the frames cover from now on, in the cursor's own cell and in those that show the same stitch, and what they covered
     * until now.
     */
    List<Rectangle> moved() {
        List<GridCell> now =
                new ArrayList<>(canvas.cells().cellsOf(canvas.bench().cursor()));
        now.add(canvas.standing());
        List<Rectangle> covered = Stream.concat(seen.stream(), now.stream())
                .map(cell -> around(canvas.boundsOf(cell)))
                .toList();
        seen = now;
        return covered;
    }

    /** What a frame round a cell that lies there covers. */
    static Rectangle around(Rectangle cell) {
        Rectangle area = new Rectangle(cell);
        area.grow(WIDTH_PX, WIDTH_PX);
        return area;
    }
}
