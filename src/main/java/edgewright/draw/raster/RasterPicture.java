package edgewright.draw.raster;

import edgewright.draw.marks.Drawing;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.function.BooleanSupplier;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Drawings as pictures in pixels. */
public final class RasterPicture {
    /** The most pixels of a picture. They are all in memory at once, at four bytes each. */
    public static final long MOST_PIXELS = 100_000_000;

    private static final double MM_PER_INCH = 25.4;

    private RasterPicture() {}

    /** The drawing at so many dots an inch; it takes 4 bytes a pixel. */
    public static BufferedImage of(Drawing drawing, double dpi) {
        return of(drawing, dpi, () -> false);
    }

    private static BufferedImage of(Drawing drawing, double dpi, BooleanSupplier cancelled) {
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
            drawing.drawOn(new RasterSurface(graphics), cancelled);
        } finally {
            graphics.dispose();
        }
        return image;
    }

    /** Writes the drawing as PNG. The stream stays open. */
    public static void writePng(Drawing drawing, double dpi, OutputStream to) throws IOException {
        writePng(drawing, dpi, to, () -> false);
    }

    /**
     * Writes the drawing as PNG. The stream stays open.
     *
     * @param cancelled asked before each mark and each time something is written; once it answers true the work ends with a
     *     {@link java.util.concurrent.CancellationException}
     */
    public static void writePng(Drawing drawing, double dpi, OutputStream to, BooleanSupplier cancelled)
            throws IOException {
        OutputStream asking = new FilterOutputStream(to) {
            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                Drawing.requireWanted(cancelled);
                out.write(bytes, from, length);
            }
        };
        BufferedImage image = of(drawing, dpi, cancelled);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        // In memory: the library's usual stream needs a folder for temporary files.
        try (ImageOutputStream stream = new MemoryCacheImageOutputStream(asking)) {
            writer.setOutput(stream);
            writer.write(image);
        } catch (IIOException e) {
            // What the library says is "I/O error"; the system knows more.
            throw e.getCause() instanceof IOException reason ? reason : e;
        } finally {
            writer.dispose();
        }
    }

    /** How many pixels a sheet takes at so many dots an inch. */
    public static double pixels(double widthMm, double heightMm, double dpi) {
        return widthMm * heightMm * dpi * dpi / (MM_PER_INCH * MM_PER_INCH);
    }
}
