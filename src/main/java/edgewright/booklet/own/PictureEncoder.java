package edgewright.booklet.own;

import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes pixels as the smaller of a JPEG and a PNG: photographs come out as the first, drawings mostly as the second. */
final class PictureEncoder {
    /** A quality at which nobody sees on paper what was left out. Common practice, no source. */
    private static final float QUALITY = 0.85f;

    private PictureEncoder() {}

    static EncodedPicture encode(int width, int height, int[] rgb, boolean grey) {
        BufferedImage image =
                new BufferedImage(width, height, grey ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_3BYTE_BGR);
        WritableRaster raster = image.getRaster();
        int bands = raster.getNumBands();
        int[] row = new int[bands * width];
        for (int y = 0; y < height; y++) {
            for (int i = 0; i < row.length; i++) {
                row[i] = rgb[y * width + i / bands] >> (16 - 8 * (i % bands)) & 255;
            }
            // Straight into the raster: the library would take greys for linear ones.
            raster.setPixels(0, y, width, 1, row);
        }
        byte[] jpeg = write(image, PictureHeader.JPEG, QUALITY);
        byte[] png = write(image, PictureHeader.PNG, 0);
        return jpeg.length < png.length
                ? new EncodedPicture(jpeg, "image/jpeg", width, height)
                : new EncodedPicture(png, "image/png", width, height);
    }

    private static byte[] write(BufferedImage image, String format, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
