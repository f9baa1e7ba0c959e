package edgewright.booklet.own;

import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * A picture in pixels, upright and in sRGB, of which nothing else is known. Two are equal if they were made of the same bytes.
 */
public final class Photograph {
    /** The finest that is printed. */
    public static final int MOST_DPI = 300;

    /** No picture is printed wider or higher than this, so no more pixels are kept than it needs. */
    private static final double LARGEST_MM = 180;

    private static final double MM_PER_INCH = 25.4;
    private static final int MOST_PIXELS_OF_A_SIDE = (int) (LARGEST_MM / MM_PER_INCH * MOST_DPI);

    private final int width;
    private final int height;
    private final int[] rgb;
    private final byte[] fingerprint;

    private Photograph(int width, int height, int[] rgb, byte[] fingerprint) {
        this.width = width;
        this.height = height;
        this.rgb = rgb;
        this.fingerprint = fingerprint;
    }

    /** The picture in a file of this folder or below it. */
    static Photograph read(Path folder, String name) throws UnprintableException {
        byte[] file = PictureFile.read(folder, name);
        PictureHeader header = PictureHeader.of(file);
        if (header.pixels() > PictureFile.MOST_PIXELS) {
            throw new UnprintableException(new PhotoFault(PhotoFault.Reason.MANY_PIXELS, header.pixels()));
        }
        PictureDecoder.Pixels stored = PictureDecoder.read(file, header);
        double scale = Math.min(1, (double) MOST_PIXELS_OF_A_SIDE / Math.max(stored.width(), stored.height()));
        int width = scaled(stored.width(), scale);
        int height = scaled(stored.height(), scale);
        int[] small = Resampling.toSize(stored.rgb(), stored.width(), stored.height(), width, height);
        return upright(small, width, height, header.orientation(), fingerprint(file));
    }

    private static int scaled(int pixels, double scale) {
        return Math.max(1, (int) Math.round(pixels * scale));
    }

    private static Photograph upright(int[] stored, int width, int height, Orientation held, byte[] fingerprint) {
        int across = held.isOnItsSide() ? height : width;
        int down = held.isOnItsSide() ? width : height;
        int[] rgb = new int[stored.length];
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                rgb[y * across + x] = stored[held.stored(x, y, width, height)];
            }
        }
        return new Photograph(across, down, rgb, fingerprint);
    }

    private static byte[] fingerprint(byte[] file) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(file);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Its width for each unit of height. */
    public double aspect() {
        return (double) width / height;
    }

    /** How wide it is at most printed so that it has at least half of the finest resolution; small pictures stay small. */
    public double mostWidthMm() {
        return width * MM_PER_INCH / (MOST_DPI / 2.0);
    }

    /**
     * As it is printed that wide, with no more pixels than the finest print shows.
     *
     * @param grey in greys, for print in one ink
     */
    public EncodedPicture printed(double widthMm, boolean grey) {
        return inPixels((int) Math.ceil(widthMm / MM_PER_INCH * MOST_DPI), grey);
    }

    /** With so many pixels across, or as many as there are if they are fewer. */
    public EncodedPicture inPixels(int across, boolean grey) {
        int newWidth = Math.max(1, Math.min(width, across));
        int newHeight = Math.max(1, Math.min(height, (int) Math.round(newWidth / aspect())));
        int[] made = Resampling.toSize(rgb, width, height, newWidth, newHeight);
        if (grey) {
            Arrays.setAll(made, i -> Resampling.grey(made[i]));
        }
        return PictureEncoder.encode(newWidth, newHeight, made, grey);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Photograph photograph && Arrays.equals(fingerprint, photograph.fingerprint);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(fingerprint);
    }

    /** Follows from the bytes of its file and from nothing else. */
    @Override
    public String toString() {
        return "Photograph " + HexFormat.of().formatHex(fingerprint);
    }
}
