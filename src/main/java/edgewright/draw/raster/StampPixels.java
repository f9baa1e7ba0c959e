package edgewright.draw.raster;

import edgewright.draw.paint.Area;
import edgewright.draw.paint.Stamp;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;

/**
 * Stamps in pixels, each drawn once for each number of pixels that it takes. A window, which paints the same stitches again and
 * again, keeps them from one picture to the next; for one picture a surface has its own.
 *
 * <p>Safe for several threads.
 */
public final class StampPixels {
    /** More are all forgotten: whoever looked at a chart at every size has no use for most of them. */
    private static final int MOST = 4000;

    private final Map<Key, BufferedImage> images = new HashMap<>();

    private record Key(Stamp stamp, int width, int height) {}

    /** The stamp on so many whole pixels, each 1 or more; clear where nothing of it is. Nobody draws on it. */
    synchronized BufferedImage of(Stamp stamp, int width, int height) {
        if (images.size() > MOST) {
            images.clear();
        }
        return images.computeIfAbsent(new Key(stamp, width, height), StampPixels::drawn);
    }

    private static BufferedImage drawn(Key key) {
        BufferedImage image = new BufferedImage(key.width(), key.height(), BufferedImage.TYPE_INT_ARGB_PRE);
        Area bounds = key.stamp().bounds();
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.scale(key.width() / bounds.widthMm(), key.height() / bounds.heightMm());
            graphics.translate(-bounds.xMm(), -bounds.yMm());
            RasterSurface surface = new RasterSurface(graphics);
            key.stamp().shapes().forEach(shape -> shape.drawOn(surface));
        } finally {
            graphics.dispose();
        }
        return image;
    }
}
