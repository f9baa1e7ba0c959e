package edgewright.desk.parts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import javax.swing.Icon;

/** A ring with a bar for what cannot be worked, a peak with a bar for what only wants care: told apart by shape first. */
public final class SeverityIcon implements Icon {
    private static final int SIZE_PX = 15;

    private final boolean error;
    /** Null for the mark's own colour, which is asked for as it is painted, since the look may change. */
    private final Color ink;

    private SeverityIcon(boolean error, Color ink) {
        this.error = error;
        this.ink = ink;
    }

    /**
     * The mark of an error or of a warning.
     *
     * @param inSelection the colour of text on the selection if the mark stands on it; null for the mark's own colour
     */
    public static SeverityIcon of(boolean error, Color inSelection) {
        return new SeverityIcon(error, inSelection);
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.translate(x, y);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setStroke(new BasicStroke(1.7f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(ink != null ? ink : Look.colour(error ? "error" : "warning"));
        if (error) {
            g.draw(new Ellipse2D.Double(1.5, 1.5, 12, 12));
            g.draw(new Line2D.Double(4.5, 7.5, 10.5, 7.5));
        } else {
            Path2D peak = new Path2D.Double();
            peak.moveTo(7.5, 1.5);
            peak.lineTo(14, 13);
            peak.lineTo(1, 13);
            peak.closePath();
            g.draw(peak);
            g.draw(new Line2D.Double(7.5, 6, 7.5, 9.5));
        }
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return SIZE_PX;
    }

    @Override
    public int getIconHeight() {
        return SIZE_PX;
    }
}
