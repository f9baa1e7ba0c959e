package edgewright.desk.start;

import edgewright.chart.Chart;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.Arm;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.raster.RasterSurface;
import edgewright.texts.Language;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

/** The corner of a border as fabric, as small as a card wants it. */
final class CardPicture {
    static final int WIDTH_PX = 134;
    static final int HEIGHT_PX = 82;

    /** So many cells of the piece are seen within the border. */
    private static final int WITHIN = 3;

    /** A cell of fewer pixels is no more than noise: of a chart with that many rounds the outer ones are seen. */
    private static final double LEAST_CELL_PX = 1.5;

    private static final double MOST_CELL_PX = 6;

    private CardPicture() {}

    /**
     * The picture, clear where there is no fabric.
     *
     * @param scale pixels of the screen for each of {@link #WIDTH_PX} and {@link #HEIGHT_PX}
     */
    static BufferedImage of(Chart chart, double scale, Language language) {
        double fits = HEIGHT_PX / (chart.rounds().size() + 1.0 + WITHIN);
        double cellPx = scale * Math.max(LEAST_CELL_PX, Math.min(MOST_CELL_PX, fits));
        double pxPerMm = cellPx / PictureStyle.CELL_MM;
        int width = (int) Math.round(WIDTH_PX * scale);
        int height = (int) Math.round(HEIGHT_PX * scale);
        int across = (int) Math.ceil(width / cellPx);
        PictureStyle style = PictureStyle.fabric(language)
                .withLook(FabricFill.ofDots(PictureStyle.CELL_MM, pxPerMm * 25.4))
                .withRepeats(1 + across / chart.shape(Arm.INCOMING.side()).w());
        CornerPicture picture = CornerPicture.of(chart, style, Emphasis.NONE);
        Area cells = picture.layout().area();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(pxPerMm, pxPerMm);
            g.translate(-cells.xMm(), -cells.yMm());
            RasterSurface surface = new RasterSurface(g);
            picture.marksIn(new Area(cells.xMm(), cells.yMm(), width / pxPerMm, height / pxPerMm)).stream()
                    .filter(mark -> mark.kind().layer() != Layer.PAPER)
                    .forEach(mark -> mark.drawOn(surface));
        } finally {
            g.dispose();
        }
        return image;
    }
}
