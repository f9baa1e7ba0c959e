package edgewright.booklet.own;

import edgewright.booklet.own.PhotoFault.Reason;
import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Reads the pixels of a picture whose header is known, as opaque sRGB. Of an animation it reads the still picture. */
final class PictureDecoder {
    /** More pixels than this are thinned out while they are read, so that a picture takes 64 MB at most. */
    private static final double MOST_IN_MEMORY = 16_000_000;

    /** What the library warns of when it has made up for something that is not there. */
    private static final List<String> DAMAGE = List.of("premature end", "truncated", "bad huffman", "missing eoi");

    private static final int PAPER = 255;

    private PictureDecoder() {}

    /** The pixels as they are stored, row by row; the colour in the lower 24 bits. */
    @SuppressWarnings("ArrayRecordComponent") // millions of pixels, handed on as they are
    record Pixels(int width, int height, int[] rgb) {}

    static Pixels read(byte[] file, PictureHeader header) throws UnprintableException {
        ImageReader reader =
                ImageIO.getImageReadersByFormatName(header.format()).next();
        List<String> warnings = new ArrayList<>();
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            // Texts in the file can be packed very small and be very large; nobody asks for them.
            reader.setInput(stream, true, true);
            reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning.toLowerCase(Locale.ROOT)));
            ImageReadParam param = reader.getDefaultReadParam();
            int step = (int) Math.ceil(Math.sqrt(header.pixels() / MOST_IN_MEMORY));
            param.setSourceSubsampling(Math.max(1, step), Math.max(1, step), 0, 0);
            Pixels pixels = pixels(reader.read(0, param));
            if (warnings.stream().anyMatch(warning -> DAMAGE.stream().anyMatch(warning::contains))) {
                throw new UnprintableException(Reason.BROKEN);
            }
            header.profile().ifPresent(profile -> toSrgb(pixels, profile));
            return pixels;
        } catch (IOException | RuntimeException e) {
            // The library fails in many ways where a file is damaged or has nonsense in it.
            throw new UnprintableException(Reason.BROKEN);
        } finally {
            reader.dispose();
        }
    }

    private static Pixels pixels(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] rgb = new int[width * height];
        boolean grey = image.getRaster().getNumBands() <= 2 && !(image.getColorModel() instanceof IndexColorModel);
        for (int y = 0; y < height; y++) {
            if (grey) {
                greys(image, y, rgb);
            } else {
                image.getRGB(0, y, width, 1, rgb, y * width, width);
            }
        }
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] = onPaper(rgb[i]);
        }
        return new Pixels(width, height, rgb);
    }

    /** A row of greys, as they stand in the file: the library takes them for linear ones and makes them lighter. */
    private static void greys(BufferedImage image, int y, int[] rgb) {
        Raster raster = image.getRaster();
        ColorModel model = image.getColorModel();
        int[] most = model.getComponentSize();
        for (int x = 0; x < image.getWidth(); x++) {
            int grey = scaled(raster.getSample(x, y, 0), most[0]);
            int alpha = raster.getNumBands() == 2 ? scaled(raster.getSample(x, y, 1), most[1]) : 255;
            rgb[y * image.getWidth() + x] = alpha << 24 | grey << 16 | grey << 8 | grey;
        }
    }

    private static int scaled(int sample, int bits) {
        int most = (1 << bits) - 1;
        return (sample * 255 + most / 2) / most;
    }

    /** What lets the paper through is mixed with it. */
    private static int onPaper(int argb) {
        int alpha = argb >>> 24;
        if (alpha == 255) {
            return argb & 0xffffff;
        }
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            mixed |= (((argb >> shift & 255) * alpha + PAPER * (255 - alpha) + 127) / 255) << shift;
        }
        return mixed;
    }

    /** A profile that is none, or not one of red, green and blue, is passed over, as a browser passes it over. */
    private static void toSrgb(Pixels pixels, byte[] bytes) {
        try {
            ICC_Profile profile = ICC_Profile.getInstance(bytes);
            if (profile.getColorSpaceType() != ColorSpace.TYPE_RGB) {
                return;
            }
            ICC_Profile srgb = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
            ColorConvertOp convert = new ColorConvertOp(new ICC_Profile[] {profile, srgb}, null);
            WritableRaster from = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, pixels.width(), 1, 3, null);
            WritableRaster to = from.createCompatibleWritableRaster();
            int[] samples = new int[3 * pixels.width()];
            for (int y = 0; y < pixels.height(); y++) {
                int row = y * pixels.width();
                for (int i = 0; i < samples.length; i++) {
                    samples[i] = pixels.rgb()[row + i / 3] >> (16 - 8 * (i % 3)) & 255;
                }
                from.setPixels(0, 0, pixels.width(), 1, samples);
                convert.filter(from, to).getPixels(0, 0, pixels.width(), 1, samples);
                for (int x = 0; x < pixels.width(); x++) {
                    pixels.rgb()[row + x] = samples[3 * x] << 16 | samples[3 * x + 1] << 8 | samples[3 * x + 2];
                }
            }
        } catch (IllegalArgumentException | CMMException e) {
            // The colours are taken for sRGB, as where there is no profile.
        }
    }
}
