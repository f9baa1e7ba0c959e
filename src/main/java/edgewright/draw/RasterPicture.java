package edgewright.draw;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;

/** Drawings as pictures in pixels. */
public final class RasterPicture {
    private static final double MM_PER_INCH = 25.4;

    private RasterPicture() {}

    /** The drawing at so many dots an inch; it takes 4 bytes a pixel. */
    public static BufferedImage of(Drawing drawing, double dpi) {
        double scale = dpi / MM_PER_INCH;
        int width = Math.max(1, (int) Math.round(drawing.widthMm() * scale));
        int height = Math.max(1, (int) Math.round(drawing.heightMm() * scale));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            // The drawing ends inside the last row and column of pixels; what is beyond must not stay black.
            graphics.setColor(Color.WHITE);
            graphics.fillRect(0, 0, width, height);
            graphics.scale(scale, scale);
            drawing.drawOn(new RasterSurface(graphics));
        } finally {
            graphics.dispose();
        }
        return image;
    }

    /** Writes the drawing as PNG. The stream stays open. */
    public static void writePng(Drawing drawing, double dpi, OutputStream to) throws IOException {
        if (!ImageIO.write(of(drawing, dpi), "png", to)) {
            throw new IOException("this Java cannot write PNG");
        }
    }
}
