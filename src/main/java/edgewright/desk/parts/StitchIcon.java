package edgewright.desk.parts;

import edgewright.chart.Colour;
import edgewright.chart.Stitch;
import edgewright.draw.picture.StitchSign;
import edgewright.draw.raster.RasterSurface;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.Icon;

/** The sign of a stitch as small as a button wants it, in the colour of the button's text. */
public final class StitchIcon implements Icon {
    private static final int WIDTH_PX = 16;
    private static final int HEIGHT_PX = 20;
    private static final double CELL_PX = 24;
    private static final double LINE_PX = 1.6;

    private final Stitch stitch;

    public StitchIcon(Stitch stitch) {
        this.stitch = stitch;
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.translate(x, y);
        Color text = component.getForeground();
        Colour ink = new Colour(text.getRGB() & 0xffffff);
        StitchSign.of(stitch, WIDTH_PX, HEIGHT_PX, CELL_PX, LINE_PX, ink).drawOn(new RasterSurface(g));
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
