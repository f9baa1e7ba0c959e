package edgewright.draw.raster;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Reads pictures in pixels that others have made, as PNG. */
public final class PngInput {
    /** The most pixels of a picture that is read. */
    public static final int MOST_PIXELS = 16_000_000;

    /** What every PNG begins with: https://www.w3.org/TR/png-3/#5PNG-file-signature */
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    private PngInput() {}

    /** What came of reading a file. */
    public sealed interface Result {}

    /**
     * The picture.
     *
     * @param argb row by row from the top left: alpha in bits 24 to 31, red, green, blue
     */
    @SuppressWarnings("ArrayRecordComponent") // millions of pixels, handed on as they are
    public record Picture(int width, int height, int[] argb) implements Result {}

    /** The picture has more pixels than are read; none of them was looked at. */
    public record TooLarge(long pixels) implements Result {}

    /** The file begins as a picture, but is none. */
    public record Broken() implements Result {}

    /** Whether these bytes begin as a PNG does. */
    public static boolean isPng(byte[] bytes) {
        return bytes.length >= SIGNATURE.length && Arrays.equals(Arrays.copyOf(bytes, SIGNATURE.length), SIGNATURE);
    }

    /** Reads the picture in these bytes. Its size is asked for before there is memory for its pixels. */
    public static Result read(byte[] bytes) {
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            // Texts and profiles in the file can be packed very small and be very large; nobody asks for them.
            reader.setInput(stream, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            long pixels = (long) width * height;
            return pixels > MOST_PIXELS ? new TooLarge(pixels) : picture(reader.read(0));
        } catch (IOException | RuntimeException e) {
            // The library fails in many ways where a file is cut off or has nonsense in it.
            return new Broken();
        } finally {
            reader.dispose();
        }
    }

    private static Picture picture(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        return new Picture(width, height, image.getRGB(0, 0, width, height, null, 0, width));
    }
}
