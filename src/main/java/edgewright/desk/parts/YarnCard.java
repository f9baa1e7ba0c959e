package edgewright.desk.parts;

import edgewright.chart.Colour;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;

/** A little card of yarn: its colour, with a thin edge so that it can be told from any ground. */
public final class YarnCard implements Icon {
    private final Colour colour;
    private final int size;

    /**
     * A card of that many pixels each way.
     *
     * @param sizePx before the scaling of the screen
     */
    public YarnCard(Colour colour, int sizePx) {
        this.colour = colour;
        this.size = sizePx;
    }

    public static Color of(Colour colour) {
        return new Color(colour.rgb());
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        RoundRectangle2D card = new RoundRectangle2D.Double(x + 0.5, y + 0.5, size - 1, size - 1, 4, 4);
        g.setColor(of(Look.vision().seen(colour)));
        g.fill(card);
        g.setColor(Look.colour("quiet"));
        g.draw(card);
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return size;
    }

    @Override
    public int getIconHeight() {
        return size;
    }
}
