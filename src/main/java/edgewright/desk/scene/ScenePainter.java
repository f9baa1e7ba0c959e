package edgewright.desk.scene;

import edgewright.chart.Place;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.BorderPicture;
import edgewright.draw.raster.RasterSurface;
import edgewright.draw.raster.SeenPixels;
import edgewright.draw.raster.StampPixels;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Paints what is ordered, beside the event thread. A border that differs from the last one in a few stitches only is painted
 * anew where these are.
 */
final class ScenePainter {
    /** Beyond this many places, each in every repeat of four sides, all is painted. */
    private static final int MOST_PLACES = 12;

    private final StampPixels stamps = new StampPixels();
    private Optional<Painted> last = Optional.empty();

    /**
     * A painted order.
     *
     * @param image in the colours of the yarns
     * @param seen the same as it is seen
     */
    record Painted(SceneOrder order, BufferedImage image, BufferedImage seen) {}

    /**
     * The picture of an order; empty if it is not wanted any more.
     *
     * @param cancelled asked now and then
     */
    Optional<Painted> paint(SceneOrder order, BooleanSupplier cancelled) {
        BorderPicture picture = BorderPicture.of(order.chart(), order.repeats(), order.style());
        Optional<BufferedImage> image = last.filter(before -> before.order().liesLike(order))
                .flatMap(before -> mended(before, order, picture))
                .or(() -> whole(order, picture, cancelled));
        Optional<Painted> painted = image.map(
                of -> new Painted(order, of, SeenPixels.of(of, order.seeing().vision())));
        last = painted.or(() -> last);
        return painted;
    }

    private Optional<BufferedImage> whole(SceneOrder order, BorderPicture picture, BooleanSupplier cancelled) {
        BufferedImage image =
                new BufferedImage(order.window().widthPx(), order.window().heightPx(), BufferedImage.TYPE_INT_RGB);
        Rectangle all = new Rectangle(image.getWidth(), image.getHeight());
        return paint(order, picture, image, all, cancelled) ? Optional.of(image) : Optional.empty();
    }

    /** The picture before with what has changed painted anew; empty if that is too much, or something else has changed. */
    private Optional<BufferedImage> mended(Painted before, SceneOrder order, BorderPicture picture) {
        Optional<List<Place>> places = ChangedPlaces.between(before.order().chart(), order.chart(), MOST_PLACES);
        if (places.isEmpty()) {
            return Optional.empty();
        }
        BufferedImage image =
                new BufferedImage(before.image().getWidth(), before.image().getHeight(), BufferedImage.TYPE_INT_RGB);
        before.image().copyData(image.getRaster());
        Rectangle all = new Rectangle(image.getWidth(), image.getHeight());
        for (Place place : places.get()) {
            for (Area area : picture.areasOf(place)) {
                Rectangle part = pixels(area, order.window()).intersection(all);
                if (!part.isEmpty()) {
                    paint(order, picture, image, part, () -> false);
                }
            }
        }
        return Optional.of(image);
    }

    private static Rectangle pixels(Area area, SceneOrder.Window window) {
        int left = (int) Math.floor((area.xMm() - window.leftMm()) * window.pxPerMm()) - 1;
        int top = (int) Math.floor((area.yMm() - window.topMm()) * window.pxPerMm()) - 1;
        int right = (int) Math.ceil((area.rightMm() - window.leftMm()) * window.pxPerMm()) + 1;
        int bottom = (int) Math.ceil((area.bottomMm() - window.topMm()) * window.pxPerMm()) + 1;
        return new Rectangle(left, top, right - left, bottom - top);
    }

    /** Paints a part; false if it was given up. */
    private boolean paint(
            SceneOrder order, BorderPicture picture, BufferedImage image, Rectangle part, BooleanSupplier cancelled) {
        SceneOrder.Window window = order.window();
        Graphics2D g = image.createGraphics();
        try {
            g.setClip(part);
            g.setColor(new Color(order.table().rgb()));
            g.fill(part);
            g.scale(window.pxPerMm(), window.pxPerMm());
            g.translate(-window.leftMm(), -window.topMm());
            double hair = 1 / window.pxPerMm();
            Area area = new Area(
                            window.leftMm() + part.x / window.pxPerMm(),
                            window.topMm() + part.y / window.pxPerMm(),
                            part.width / window.pxPerMm(),
                            part.height / window.pxPerMm())
                    .grown(hair);
            RasterSurface surface = new RasterSurface(g, stamps);
            for (Mark mark : picture.marksIn(area)) {
                if (cancelled.getAsBoolean()) {
                    return false;
                }
                if (mark.kind().layer() != Layer.PAPER) {
                    mark.drawOn(surface);
                }
            }
            return true;
        } finally {
            g.dispose();
        }
    }
}
