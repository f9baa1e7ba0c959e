package edgewright.testing;

import edgewright.draw.marks.Drawing;
import edgewright.draw.raster.RasterPicture;
import java.awt.image.BufferedImage;

/** A photocopier of one bit: what it reads is blurred, and what is not dark enough then is lost. */
public final class Photocopy {
    /** Dots an inch of print and copies. */
    public static final double DPI = 300;

    /** The standard deviation of the blur: half its height is 0.15 mm wide. */
    private static final double BLUR_MM = 0.15 / 2.355;

    /** How dark a dot must be to be copied, of 1: a little is lost each time. */
    private static final double DARK = 0.55;

    private Photocopy() {}

    /** The dark dots of the copy of a copy of a printed drawing, row by row. */
    public static boolean[][] twice(Drawing drawing) {
        return copy(copy(printed(drawing)));
    }

    /** The dark dots of a drawing that is printed in one bit at half grey. */
    public static boolean[][] printed(Drawing drawing) {
        BufferedImage image = RasterPicture.of(drawing, DPI);
        boolean[][] dark = new boolean[image.getHeight()][image.getWidth()];
        for (int y = 0; y < dark.length; y++) {
            for (int x = 0; x < dark[y].length; x++) {
                dark[y][x] = (image.getRGB(x, y) >> 8 & 0xff) < 128;
            }
        }
        return dark;
    }

    private static boolean[][] copy(boolean[][] dark) {
        double sigma = BLUR_MM * DPI / 25.4;
        int reach = (int) Math.ceil(3 * sigma);
        double[] weights = new double[2 * reach + 1];
        double sum = 0;
        for (int i = -reach; i <= reach; i++) {
            weights[i + reach] = Math.exp(-i * i / (2 * sigma * sigma));
            sum += weights[i + reach];
        }
        int height = dark.length;
        int width = dark[0].length;
        double[][] across = new double[height][width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                for (int i = Math.max(-reach, -x); i <= Math.min(reach, width - 1 - x); i++) {
                    across[y][x] += dark[y][x + i] ? weights[i + reach] / sum : 0;
                }
            }
        }
        boolean[][] copied = new boolean[height][width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double grey = 0;
                for (int i = Math.max(-reach, -y); i <= Math.min(reach, height - 1 - y); i++) {
                    grey += across[y + i][x] * weights[i + reach] / sum;
                }
                copied[y][x] = grey > DARK;
            }
        }
        return copied;
    }
}
