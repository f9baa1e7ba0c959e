package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.desk.parts.Look;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Paints the cursor over the chart: a double frame, dark on light, that shows on yarn of any colour; and small corners round
 * every other cell that is the same stitch of the chart.
 */
final class CanvasCursor {
    private static final Color DARK = new Color(0x1d2126);
    private static final Color LIGHT = Color.WHITE;

    /** A line of odd width would end in the middle of pixels, and screens and pictures round that each their own way. */
    private static final double HAIR_PX = 0.05;

    private final Graphics2D g;
    private final ChartCanvas canvas;

    CanvasCursor(Graphics2D g, ChartCanvas canvas) {
        this.g = g;
        this.canvas = canvas;
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** The cell under the mouse. */
    void hovered(GridCell cell) {
        frame(canvas.boundsOf(cell), 1, Look.colour("accent"));
    }

    /** A cell in which a stitch would land. */
    void landing(Rectangle at) {
        frame(at, 3, LIGHT);
        frame(at, 1, Look.colour("accent"));
    }

    /** A cell that would have a finding which it does not have now. */
    void breaking(Rectangle at) {
        Color error = Look.colour("error");
        g.setColor(new Color(error.getRed(), error.getGreen(), error.getBlue(), 90));
        g.fill(at);
        frame(at, 3, LIGHT);
        frame(at, 1.5f, error);
    }

    /** The cells that are the same stitch as the cursor's, without its own. */
    void twins(List<GridCell> cells, GridCell standing) {
        for (GridCell cell : cells) {
            Rectangle at = canvas.boundsOf(cell);
            if (!cell.equals(standing) && g.hitClip(at.x - 4, at.y - 4, at.width + 8, at.height + 8)) {
                float thick = Math.min(1, canvas.cellPx() / 14f);
                corners(at, 3 * thick, LIGHT);
                corners(at, 1.5f * thick, Look.colour("accent"));
            }
        }
    }

    /** What is marked: a veil over it and a dashed line around. */
    void marked(Path2D all) {
        if (all.getCurrentPoint() == null) {
            return;
        }
        Color accent = Look.colour("accent");
        g.setColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 50));
        g.fill(all);
        g.setColor(LIGHT);
        g.setStroke(new BasicStroke(3));
        g.draw(all);
        g.setColor(accent);
        g.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 3}, 0));
        g.draw(all);
    }

    /** The cell of the cursor; a thinner frame while the keys go elsewhere. */
    void standing(GridCell cell, boolean focused) {
        Rectangle at = canvas.boundsOf(cell);
        at.grow(1, 1);
        // On cells of a few pixels a frame as thick as on large ones would hide them.
        float thick = Math.min(1, canvas.cellPx() / 14f);
        frame(at, (focused ? 5 : 3) * thick, LIGHT);
        frame(at, (focused ? 2.5f : 1.25f) * thick, focused ? Look.colour("cursor") : DARK);
    }

    private void frame(Rectangle at, float widthPx, Color colour) {
        g.setStroke(new BasicStroke(widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        g.setColor(colour);
        g.draw(new Rectangle2D.Double(at.x + HAIR_PX, at.y + HAIR_PX, at.width, at.height));
    }

    private void corners(Rectangle at, float widthPx, Color colour) {
        g.setStroke(new BasicStroke(widthPx, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(colour);
        int arm = Math.max(2, at.width / 4);
        int right = at.x + at.width;
        int bottom = at.y + at.height;
        g.drawPolyline(new int[] {at.x, at.x, at.x + arm}, new int[] {at.y + arm, at.y, at.y}, 3);
        g.drawPolyline(new int[] {right - arm, right, right}, new int[] {at.y, at.y, at.y + arm}, 3);
        g.drawPolyline(new int[] {right, right, right - arm}, new int[] {bottom - arm, bottom, bottom}, 3);
        g.drawPolyline(new int[] {at.x + arm, at.x, at.x}, new int[] {bottom, bottom, bottom - arm}, 3);
    }
}
