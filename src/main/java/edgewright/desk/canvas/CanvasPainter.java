package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.desk.picture.CanvasPicture;
import edgewright.desk.picture.CanvasTiles;
import edgewright.desk.picture.DamagedParts;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Paints the canvas: the chart from its tiles, and over it what is marked, the frame under the mouse, and the cursor. */
final class CanvasPainter {
    private static final int MOST_SINGLE_PARTS = 8;
    /** A frame lasts 16 ms, and there is more to do in it than to paint the chart. */
    private static final long MOST_PAINTING_NANOS = 6_000_000;

    private final ChartCanvas canvas;
    private final CanvasTiles tiles = new CanvasTiles();
    private Optional<LitCells> lit = Optional.empty();

    CanvasPainter(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    /** Paints these over the chart too. */
    void light(LitCells cells) {
        lit = Optional.of(cells);
    }

    /** Everything looks otherwise; what was painted is shown until its turn comes. */
    void outdate() {
        tiles.outdate();
    }

    /** What lies in these parts of the canvas looks otherwise. */
    void spoil(List<Rectangle> parts) {
        tiles.spoil(parts);
    }

    /** Paints on the screen, from what was painted before as far as it holds still. */
    void paint(Graphics2D g, CanvasPicture picture) {
        Rectangle at = canvas.boundsOf(canvas.standing());
        // Nobody waits for a canvas that is not shown, so it is painted in one go.
        List<Rectangle> owed = tiles.lay(
                g,
                picture,
                canvas.scale(),
                g.getClipBounds(),
                new Point((int) at.getCenterX(), (int) at.getCenterY()),
                canvas.isShowing() ? MOST_PAINTING_NANOS : Long.MAX_VALUE);
        if (!owed.isEmpty()) {
            SwingUtilities.invokeLater(() -> owed.forEach(canvas::repaint));
        }
        paintOver(g, picture);
    }

    /** Paints all of it anew, whatever was painted before. */
    void print(Graphics2D g, CanvasPicture picture) {
        picture.paintOn(g, canvas.scale(), g.getClipBounds());
        paintOver(g, picture);
    }

    private void paintOver(Graphics2D g, CanvasPicture picture) {
        CanvasCursor cursor = new CanvasCursor(g, canvas);
        lit.ifPresent(cells -> cells.paint(g));
        canvas.ghost().paint(g, cursor);
        cursor.marked(canvas.marking().outline());
        new MirrorAxes(canvas).paint(g, canvas.toolbox().symmetry().mirrors());
        Place place = canvas.bench().cursor();
        List<GridCell> twins = new CursorFrames(canvas).twins();
        cursor.twins(twins, canvas.standing());
        cursor.standing(canvas.standing(), canvas.isFocusOwner());
        if (picture.isRinged(place)) {
            // The finding that somebody goes to is not to be hidden by having gone there.
            picture.layout().cellsOf(place).stream()
                    .filter(cell -> CursorFrames.around(canvas.boundsOf(cell)).intersects(g.getClipBounds()))
                    .forEach(cell -> picture.paintRing((Graphics2D) g.create(), canvas.scale(), cell));
        }
    }

    /**
     * Paints these parts again, at once where they are few: the repeat is drawn in several places far from each other, and
     * later all between them would be painted too.
     */
    void mend(List<Rectangle> damage) {
        Rectangle visible = canvas.getVisibleRect();
        List<Rectangle> seen = DamagedParts.merged(damage.stream()
                .filter(visible::intersects)
                .map(visible::intersection)
                .distinct()
                .toList());
        if (seen.size() <= MOST_SINGLE_PARTS && tiles.areReady(seen, canvas.scale())) {
            seen.forEach(canvas::paintImmediately);
        } else {
            seen.forEach(canvas::repaint);
        }
    }
}
