package edgewright.testing;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Pictures that stand for the photographs of a designer, sound and broken ones, made by code. */
public final class Pictures {
    private static final int PNG_SIGNATURE = 8;

    /** Signature, then the first chunk with its 13 bytes. */
    private static final int AFTER_HEADER = PNG_SIGNATURE + 12 + 13;

    private Pictures() {}

    /** A shore at low water: sky, sea, sand and a row of reeds, with a little noise, so that it packs as photographs do. */
    public static BufferedImage shore(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int noise = (((x * 7919 + y * 104729) * 31) >>> 13) & 15;
                int down = 255 * y / height;
                boolean reed = x * 40 / width % 3 == 0 && y > height * 2 / 5 + (x * 31 / width % 5) * height / 20;
                int red = reed ? 60 : 120 + down / 3;
                int green = reed ? 80 + down / 6 : 150 + down / 4;
                int blue = reed ? 40 : 200 - down / 3;
                image.setRGB(x, y, ((red + noise) << 16) | ((green + noise) << 8) | Math.min(255, blue + noise));
            }
        }
        return image;
    }

    /** The picture as a JPEG. */
    public static byte[] jpeg(BufferedImage image) throws IOException {
        return written(image, "jpg");
    }

    /** The picture as a PNG. */
    public static byte[] png(BufferedImage image) throws IOException {
        return written(image, "png");
    }

    private static byte[] written(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        if (!ImageIO.write(image, format, bytes)) {
            throw new IOException("not written as " + format);
        }
        return bytes.toByteArray();
    }

    /**
     * A block of EXIF: how the camera was held, who made it, and a place on the globe.
     *
     * @param orientation 1 to 8, or nonsense
     */
    public static byte[] exif(int orientation) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeBytes("MM");
        out.writeShort(42);
        out.writeInt(8);
        out.writeShort(3);
        entry(out, 0x0112, 3, 1, orientation << 16);
        entry(out, 0x010f, 2, 16, 50);
        entry(out, 0x8825, 4, 1, 66);
        out.writeInt(0);
        out.writeBytes("SECRET-CAMERA-7\0");
        out.writeShort(1);
        entry(out, 0x0001, 2, 2, 'N' << 24);
        out.writeInt(0);
        return bytes.toByteArray();
    }

    private static void entry(DataOutputStream out, int tag, int type, int count, int value) throws IOException {
        out.writeShort(tag);
        out.writeShort(type);
        out.writeInt(count);
        out.writeInt(value);
    }

    /** The JPEG with a segment more, right after its beginning. */
    public static byte[] withSegment(byte[] jpeg, int marker, byte[]... parts) throws IOException {
        int length = 2 + Arrays.stream(parts).mapToInt(part -> part.length).sum();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(new byte[] {(byte) 0xff, (byte) marker, (byte) (length >> 8), (byte) length});
        for (byte[] part : parts) {
            out.write(part);
        }
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    /** The JPEG with EXIF, and with a packet of XMP that names a person. */
    public static byte[] withPrivateMatter(byte[] jpeg, int orientation) throws IOException {
        byte[] xmp = withSegment(
                jpeg,
                0xe1,
                ascii("http://ns.adobe.com/xap/1.0/\0"),
                ascii("<x:xmpmeta xmlns:x='adobe:ns:meta/'>SECRET-PERSON</x:xmpmeta>"));
        return withSegment(xmp, 0xe1, ascii("Exif\0\0"), exif(orientation));
    }

    /** The JPEG with a profile of linear light, by which its values mean lighter colours. */
    public static byte[] withLinearProfile(byte[] jpeg) throws IOException {
        return withSegment(jpeg, 0xe2, ascii("ICC_PROFILE\0"), new byte[] {1, 1}, linear());
    }

    /** The PNG with such a profile. */
    public static byte[] pngWithLinearProfile(byte[] png) throws IOException {
        Deflater deflater = new Deflater();
        deflater.setInput(linear());
        deflater.finish();
        byte[] packed = new byte[10_000];
        int length = deflater.deflate(packed);
        deflater.end();
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.write(ascii("linear\0\0"));
        body.write(packed, 0, length);
        return withChunk(png, "iCCP", body.toByteArray());
    }

    private static byte[] linear() {
        return ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
    }

    /** The PNG with a chunk more, right after its header. */
    public static byte[] withChunk(byte[] png, String name, byte[] body) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, AFTER_HEADER);
        out.write(chunk(name, body));
        out.write(png, AFTER_HEADER, png.length - AFTER_HEADER);
        return out.toByteArray();
    }

    private static byte[] chunk(String name, byte[] body) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(ascii(name));
        sum.update(body);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(body.length);
        out.write(ascii(name));
        out.write(body);
        out.writeInt((int) sum.getValue());
        return bytes.toByteArray();
    }

    /** A PNG of some sixty bytes that says that it is as large as this. */
    public static byte[] pngThatSaysItIs(int width, int height) throws IOException {
        ByteArrayOutputStream header = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(header);
        out.writeInt(width);
        out.writeInt(height);
        out.write(new byte[] {8, 2, 0, 0, 0});
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.write(png(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)), 0, PNG_SIGNATURE);
        png.write(chunk("IHDR", header.toByteArray()));
        png.write(chunk("IEND", new byte[0]));
        return png.toByteArray();
    }

    /** A JPEG in cyan, magenta, yellow and black. */
    public static byte[] jpegInFourInks() throws IOException {
        WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 16, 16, 4, null);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(raster, null, null), null);
        }
        writer.dispose();
        return bytes.toByteArray();
    }

    /** One colour with 16 bits for each part of it. */
    public static BufferedImage deep(int red, int green, int blue) {
        ComponentColorModel model = new ComponentColorModel(
                ColorSpace.getInstance(ColorSpace.CS_sRGB), false, false, Transparency.OPAQUE, DataBuffer.TYPE_USHORT);
        WritableRaster raster = model.createCompatibleWritableRaster(8, 8);
        for (int i = 0; i < 64; i++) {
            raster.setPixel(i % 8, i / 8, new int[] {red, green, blue});
        }
        return new BufferedImage(model, raster, false, null);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
