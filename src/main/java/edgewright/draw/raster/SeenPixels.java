package edgewright.draw.raster;

import edgewright.draw.paint.ColourVision;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** A painted picture as eyes of some kind see it. */
public final class SeenPixels {
    private SeenPixels() {}

    /**
     * The picture as it is seen: itself in full colour, else another one of the same size.
     *
     * @param image of {@link BufferedImage#TYPE_INT_RGB}, which is not changed
     */
    public static BufferedImage of(BufferedImage image, ColourVision vision) {
        if (vision == ColourVision.FULL) {
            return image;
        }
        BufferedImage seen = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        int[] from = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        int[] to = ((DataBufferInt) seen.getRaster().getDataBuffer()).getData();
        System.arraycopy(from, 0, to, 0, from.length);
        vision.see(to);
        return seen;
    }

    /** The same of a picture through which something else is seen: of {@link BufferedImage#TYPE_INT_ARGB}, which is changed. */
    public static void see(BufferedImage image, ColourVision vision) {
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < pixels.length; i++) {
            if (pixels[i] != 0) {
                pixels[i] = (pixels[i] & 0xff000000) | vision.seen(pixels[i]);
            }
        }
    }
}
