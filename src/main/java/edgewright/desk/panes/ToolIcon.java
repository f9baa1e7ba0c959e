package edgewright.desk.panes;

import edgewright.desk.tool.Mirror;
import edgewright.desk.tool.Tools;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import javax.swing.Icon;

/**
 * The sign of a tool, of a mirror or of a view on its button, drawn in the colour of the button's text on 18 by 18: tools leave stitches
 * behind, mirrors are an axis with what lies on both sides of it.
 */
final class ToolIcon implements Icon {
    private static final int EDGE_PX = 18;
    private static final float LINE = 1.6f;
    private static final float[] DASHES = {2.4f, 2};
    private static final float[] DOTS = {1.4f, 2.2f};

    private final Consumer<ToolIcon> sign;
    private Graphics2D g;

    private ToolIcon(Consumer<ToolIcon> sign) {
        this.sign = sign;
    }

    static ToolIcon of(Tools tool) {
        return new ToolIcon(
                switch (tool) {
                    case POINTER -> ToolIcon::pointer;
                    case MARKER -> ToolIcon::marker;
                    case BRUSH -> ToolIcon::brush;
                    case LINE -> ToolIcon::line;
                    case RECTANGLE -> ToolIcon::rectangle;
                    case FILL -> ToolIcon::fill;
                });
    }

    static ToolIcon of(Mirror mirror) {
        return new ToolIcon(
                switch (mirror) {
                    case CORNER -> ToolIcon::corner;
                    case REPEAT -> ToolIcon::middle;
                    case HALF -> ToolIcon::half;
                });
    }

    /** How the chart is looked at: the layers by the name of their buttons, and what is done to the size. */
    static ToolIcon ofView(String id) {
        return new ToolIcon(
                switch (id) {
                    case "layers.BOTH" -> ToolIcon::both;
                    case "layers.FABRIC" -> ToolIcon::fabric;
                    case "layers.MARKS" -> ToolIcon::marks;
                    case "turn" -> ToolIcon::rotate;
                    case "zoomOut" -> ToolIcon::smaller;
                    case "zoomIn" -> ToolIcon::larger;
                    default -> ToolIcon::whole;
                });
    }

    private void both() {
        fabric();
        draw(new Line2D.Double(2, 16, 16, 2));
    }

    /** Rounds in two yarns. */
    private void fabric() {
        dot(2, 2, 6);
        dot(10, 10, 6);
        draw(new Rectangle2D.Double(2, 2, 14, 14));
    }

    /** A chart of signs. */
    private void marks() {
        draw(new Rectangle2D.Double(2, 2, 14, 14));
        draw(new Line2D.Double(9, 5.5, 9, 12.5));
        draw(new Line2D.Double(5.5, 9, 12.5, 9));
    }

    private void rotate() {
        draw(new Arc2D.Double(3, 3, 12, 12, 40, 250, Arc2D.OPEN));
        Path2D head = new Path2D.Double();
        head.moveTo(10.5, 2);
        head.lineTo(14.2, 5.4);
        head.lineTo(15, 1);
        draw(head);
    }

    private void smaller() {
        draw(new Line2D.Double(4, 9, 14, 9));
    }

    private void larger() {
        smaller();
        draw(new Line2D.Double(9, 4, 9, 14));
    }

    /** A chart that just fits between four corners. */
    private void whole() {
        dot(6, 6, 6);
        for (int x : new int[] {2, 16}) {
            for (int y : new int[] {2, 16}) {
                draw(new Line2D.Double(x, y, x == 2 ? 5 : 13, y));
                draw(new Line2D.Double(x, y, x, y == 2 ? 5 : 13));
            }
        }
    }

    /** A crochet hook that points at the upper left. */
    private void pointer() {
        Path2D hook = new Path2D.Double();
        hook.moveTo(15.5, 15.5);
        hook.lineTo(5, 5);
        hook.curveTo(3.4, 3.4, 5.2, 1.6, 6.8, 3.2);
        hook.lineTo(7.8, 4.4);
        draw(hook);
        dot(2, 12, 3);
    }

    /** A dashed frame round two stitches. */
    private void marker() {
        draw(new Rectangle2D.Double(2, 3.5, 14, 11), DASHES);
        dot(5, 7.5, 3);
        dot(10, 7.5, 3);
    }

    /** Stitches side by side on a wavy way. */
    private void brush() {
        dot(1, 10.5, 3);
        dot(5.3, 6.5, 3);
        dot(9.6, 9, 3);
        dot(13.9, 4.5, 3);
        Path2D way = new Path2D.Double();
        way.moveTo(2, 15.5);
        way.curveTo(7, 10.5, 10, 17.5, 16, 11.5);
        draw(way);
    }

    /** Stitches on a straight line between two ends. */
    private void line() {
        draw(new Line2D.Double(3, 15, 15, 3));
        dot(1, 13, 4);
        dot(13, 1, 4);
        dot(7.3, 7.2, 3.4);
    }

    private void rectangle() {
        draw(new Rectangle2D.Double(2, 4, 14, 10));
        dot(0.5, 2.5, 3.4);
        dot(14.1, 12.1, 3.4);
    }

    /** A patch of stitches side by side, one of them not like the others. */
    private void fill() {
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                if (row == 0 && column == 2) {
                    draw(new Rectangle2D.Double(12.6, 2.2, 3.2, 3.2));
                } else {
                    dot(1.4 + column * 5.4, 1.4 + row * 5.4, 4.4);
                }
            }
        }
    }

    /** Two arms that meet in a corner, and the axis through it. */
    private void corner() {
        Path2D arms = new Path2D.Double();
        arms.moveTo(16.5, 6);
        arms.lineTo(6, 6);
        arms.lineTo(6, 16.5);
        draw(arms);
        draw(new Line2D.Double(1, 1, 15, 15), DASHES);
        dot(11, 1.4, 3);
        dot(1.4, 11, 3);
    }

    /** An axis between two slopes. */
    private void middle() {
        draw(new Line2D.Double(9, 1, 9, 17), DASHES);
        Path2D slopes = new Path2D.Double();
        slopes.moveTo(6, 4);
        slopes.lineTo(1.5, 14);
        slopes.lineTo(6, 14);
        slopes.closePath();
        slopes.moveTo(12, 4);
        slopes.lineTo(16.5, 14);
        slopes.lineTo(12, 14);
        slopes.closePath();
        draw(slopes);
    }

    /** The same slope twice. */
    private void half() {
        draw(new Line2D.Double(9, 1, 9, 17), DOTS);
        Path2D slopes = new Path2D.Double();
        slopes.moveTo(6, 4);
        slopes.lineTo(1.5, 14);
        slopes.lineTo(6, 14);
        slopes.closePath();
        slopes.moveTo(16.5, 4);
        slopes.lineTo(12, 14);
        slopes.lineTo(16.5, 14);
        slopes.closePath();
        draw(slopes);
    }

    private void dot(double x, double y, double edge) {
        g.fill(new Rectangle2D.Double(x, y, edge, edge));
    }

    private void draw(Shape shape) {
        g.setStroke(new BasicStroke(LINE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    private void draw(Shape shape, float[] dashes) {
        g.setStroke(new BasicStroke(LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
        g.draw(shape);
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        g = (Graphics2D) graphics.create();
        g.translate(x, y);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(component.getForeground());
        sign.accept(this);
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return EDGE_PX;
    }

    @Override
    public int getIconHeight() {
        return EDGE_PX;
    }
}
