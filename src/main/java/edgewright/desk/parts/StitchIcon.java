package edgewright.desk.parts;

import edgewright.chart.Stitch;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import javax.swing.Icon;

/** The mark of a stitch as small as a button wants it, in the colour of the button's text; after the marks on the chart. */
public final class StitchIcon implements Icon {
    private static final int WIDTH_PX = 16;
    private static final int HEIGHT_PX = 20;

    private final Stitch stitch;

    public StitchIcon(Stitch stitch) {
        this.stitch = stitch;
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.translate(x, y);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(component.getForeground());
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        switch (stitch) {
            case LONG -> {
                g.draw(new Line2D.Double(8, 2, 8, 18));
                g.draw(new Line2D.Double(4, 2, 12, 2));
                g.draw(new Line2D.Double(5, 11.5, 11, 8.5));
            }
            case BACK_LOOP -> g.draw(new Arc2D.Double(3, 8, 10, 8, 180, 180, Arc2D.OPEN));
            case PLAIN -> {
                g.draw(new Line2D.Double(8, 5.5, 8, 14.5));
                g.draw(new Line2D.Double(3.5, 10, 12.5, 10));
            }
            case CHAIN -> g.draw(new Ellipse2D.Double(2.5, 6.5, 11, 7));
        }
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return WIDTH_PX;
    }

    @Override
    public int getIconHeight() {
        return HEIGHT_PX;
    }
}
