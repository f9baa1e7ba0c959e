package edgewright.desk.parts;

import edgewright.chart.Chart;
import edgewright.check.Checker;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.Arm;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.raster.RasterSurface;
import edgewright.texts.Language;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JPanel;

/** A small chart as a page of the rule book shows it: drawn whole, what breaks a rule ringed. */
final class LittlePicture extends JPanel {
    private static final double CELL_PX = 26;

    private static final int FEW_STITCHES = 3;

    private final transient Chart chart;
    private final transient Language language;
    private transient CornerPicture picture;

    LittlePicture(Chart chart, String caption, Language language) {
        this.chart = chart;
        this.language = language;
        setOpaque(false);
        getAccessibleContext().setAccessibleName(caption);
        draw();
    }

    private void draw() {
        // So small a chart is clearer without brackets and arrows, and with a few stitches on each arm.
        PictureStyle style = PictureStyle.screen(language)
                .withPalette(Look.palette())
                .withLabels(false)
                .withRepeats(Math.max(
                        1, FEW_STITCHES / chart.shape(Arm.INCOMING.side()).w()));
        picture =
                CornerPicture.of(chart, style, Emphasis.of(Checker.check(chart).findings()));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (chart != null) {
            draw();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        double pxPerMm = pxPerMm(getWidth() == 0 ? Integer.MAX_VALUE : getWidth());
        return new Dimension((int) Math.ceil(picture.widthMm() * CELL_PX / PictureStyle.CELL_MM), (int)
                Math.ceil(picture.heightMm() * pxPerMm));
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean otherWidth = width != getWidth();
        super.setBounds(x, y, width, height);
        if (otherWidth) {
            // A narrower picture is lower too.
            revalidate();
        }
    }

    private double pxPerMm(int widthPx) {
        return Math.min(CELL_PX / PictureStyle.CELL_MM, widthPx / picture.widthMm());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        double scale = pxPerMm(getWidth());
        g.scale(scale, scale);
        RasterSurface surface = new RasterSurface(g);
        picture.marksIn(new Area(0, 0, picture.widthMm(), picture.heightMm())).forEach(mark -> mark.drawOn(surface));
        g.dispose();
    }
}
