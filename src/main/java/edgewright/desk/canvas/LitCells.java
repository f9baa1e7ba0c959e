package edgewright.desk.canvas;

import edgewright.chart.Place;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Lit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The cells that are lit since somebody points at their words or reads them, in every copy of the repeat; and which stitch the mouse
 * points at, for the words to be lit.
 */
final class LitCells extends MouseAdapter {
    private static final int VEIL = 80;
    private static final Color LIGHT = Color.WHITE;
    /** How far a frame reaches beyond what it is round. */
    private static final int REACH_PX = 4;

    private final ChartCanvas canvas;
    private final Lit lit;
    private List<Rectangle> strips = List.of();
    private List<Rectangle> marks = List.of();
    private List<Object> laidFor = List.of();

    /** Watches the mouse on the canvas from now on. */
    LitCells(ChartCanvas canvas, Lit lit) {
        this.canvas = canvas;
        this.lit = lit;
        canvas.addMouseMotionListener(this);
        canvas.addMouseListener(this);
        lit.whenLit(this::follow);
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        lit.point(canvas.cellAt(event.getPoint()).flatMap(canvas::placeIn));
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        // Whoever draws looks at the chart; the words follow the cursor.
        lit.point(Optional.empty());
    }

    @Override
    public void mouseExited(MouseEvent event) {
        lit.point(Optional.empty());
    }

    private void follow() {
        repaintLit();
        lay();
        repaintLit();
        // The copy of the stitch that is nearest to what is seen already.
        Rectangle seen = canvas.getVisibleRect();
        marks.stream()
                .min(Comparator.comparingDouble(cell ->
                        Math.hypot(cell.getCenterX() - seen.getCenterX(), cell.getCenterY() - seen.getCenterY())))
                .filter(cell -> !seen.contains(cell))
                .ifPresent(cell -> {
                    Rectangle around = new Rectangle(cell);
                    around.grow(2 * cell.width, 2 * cell.height);
                    canvas.scrollRectToVisible(around);
                });
    }

    private void repaintLit() {
        for (List<Rectangle> some : List.of(strips, marks)) {
            for (Rectangle strip : some) {
                Rectangle around = new Rectangle(strip);
                around.grow(REACH_PX, REACH_PX);
                canvas.repaint(around);
            }
        }
    }

    /** Notes where the lit cells lie, if they or the cells of the chart have moved. */
    private void lay() {
        List<Object> wanted = List.of(lit.places(), lit.mark(), canvas.scale(), canvas.cells());
        if (wanted.equals(laidFor)) {
            return;
        }
        laidFor = wanted;
        marks = lit.mark().stream().flatMap(place -> boundsOf(place).stream()).toList();
        strips = strips(
                lit.places().stream().flatMap(place -> boundsOf(place).stream()).toList());
    }

    private List<Rectangle> boundsOf(Place place) {
        return canvas.bench().chart().has(place)
                ? canvas.cells().cellsOf(place).stream().map(canvas::boundsOf).toList()
                : List.of();
    }

    /** Cells side by side as one, first along lines and then along columns. */
    private static List<Rectangle> strips(List<Rectangle> cells) {
        List<Rectangle> level = joined(
                cells, Comparator.<Rectangle>comparingInt(cell -> cell.y).thenComparingInt(cell -> cell.x), true);
        return joined(
                level, Comparator.<Rectangle>comparingInt(cell -> cell.x).thenComparingInt(cell -> cell.y), false);
    }

    private static List<Rectangle> joined(List<Rectangle> cells, Comparator<Rectangle> order, boolean level) {
        List<Rectangle> joined = new ArrayList<>();
        for (Rectangle cell : cells.stream().sorted(order).toList()) {
            int last = joined.size() - 1;
            if (last >= 0 && goesOn(joined.get(last), cell, level)) {
                joined.set(last, joined.get(last).union(cell));
            } else {
                joined.add(cell);
            }
        }
        return joined;
    }

    /** Whether a cell is as wide, or as high, as what lies before it and touches that. Edges lie over each other by a pixel. */
    private static boolean goesOn(Rectangle before, Rectangle cell, boolean level) {
        return level
                ? before.y == cell.y && before.height == cell.height && cell.x <= before.x + before.width
                : before.x == cell.x && before.width == cell.width && cell.y <= before.y + before.height;
    }

    void paint(Graphics2D g) {
        if (lit.places().isEmpty() && lit.mark().isEmpty()) {
            return;
        }
        lay();
        Color accent = Look.colour("accent");
        float thick = Math.min(1, canvas.cellPx() / 12f);
        for (Rectangle strip : strips) {
            if (g.hitClip(strip.x - REACH_PX, strip.y - REACH_PX, strip.width + 8, strip.height + 8)) {
                g.setColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), VEIL));
                g.fill(strip);
                frame(g, strip, 3 * thick, LIGHT);
                frame(g, strip, 1.6f * thick, accent);
            }
        }
        for (Rectangle cell : marks) {
            frame(g, cell, 6 * thick, LIGHT);
            frame(g, cell, 3.4f * thick, accent);
        }
    }

    private static void frame(Graphics2D g, Rectangle at, float widthPx, Color colour) {
        g.setStroke(new BasicStroke(widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.setColor(colour);
        g.drawRect(at.x, at.y, at.width, at.height);
    }
}
