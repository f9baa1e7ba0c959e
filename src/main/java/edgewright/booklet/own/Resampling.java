package edgewright.booklet.own;

import java.util.Arrays;

/**
 * Makes pictures smaller: each new pixel is the mean of the area that it covers, taken of the light itself and not of its
 * coded values, so that fine stripes do not get darker. sRGB is coded as IEC 61966-2-1 says.
 */
final class Resampling {
    private static final int CODES = 4096;
    private static final float[] LIGHT = new float[256];
    private static final int[] CODE = new int[CODES + 1];

    static {
        for (int code = 0; code < LIGHT.length; code++) {
            double share = code / 255.0;
            LIGHT[code] = (float) (share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4));
        }
        for (int i = 0; i <= CODES; i++) {
            double light = i / (double) CODES;
            double share = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
            CODE[i] = (int) Math.round(255 * share);
        }
    }

    private Resampling() {}

    /**
     * The picture in this size, which is not larger.
     *
     * @param rgb row by row, the colour in the lower 24 bits
     */
    static int[] toSize(int[] rgb, int width, int height, int newWidth, int newHeight) {
        if (newWidth == width && newHeight == height) {
            return rgb.clone();
        }
        int[] made = new int[newWidth * newHeight];
        float[] row = new float[3 * newWidth];
        float[] sum = new float[3 * newWidth];
        double step = (double) height / newHeight;
        for (int y = 0; y < newHeight; y++) {
            double top = y * step;
            double foot = Math.min(height, top + step);
            Arrays.fill(sum, 0);
            for (int from = (int) top; from < foot; from++) {
                float share = (float) ((Math.min(from + 1, foot) - Math.max(from, top)) / step);
                row(rgb, from * width, width, newWidth, row);
                for (int i = 0; i < sum.length; i++) {
                    sum[i] += share * row[i];
                }
            }
            for (int x = 0; x < newWidth; x++) {
                made[y * newWidth + x] = code(sum[3 * x]) << 16 | code(sum[3 * x + 1]) << 8 | code(sum[3 * x + 2]);
            }
        }
        return made;
    }

    /** The light of one row of the old height and the new width: red, green and blue of each pixel. */
    private static void row(int[] rgb, int start, int width, int newWidth, float[] light) {
        double step = (double) width / newWidth;
        for (int x = 0; x < newWidth; x++) {
            double left = x * step;
            double right = Math.min(width, left + step);
            float red = 0;
            float green = 0;
            float blue = 0;
            for (int from = (int) left; from < right; from++) {
                float share = (float) ((Math.min(from + 1, right) - Math.max(from, left)) / step);
                int pixel = rgb[start + from];
                red += share * LIGHT[pixel >> 16 & 255];
                green += share * LIGHT[pixel >> 8 & 255];
                blue += share * LIGHT[pixel & 255];
            }
            light[3 * x] = red;
            light[3 * x + 1] = green;
            light[3 * x + 2] = blue;
        }
    }

    /** The grey of the same luminance, by the weights of sRGB. */
    static int grey(int rgb) {
        float light = 0.2126f * LIGHT[rgb >> 16 & 255] + 0.7152f * LIGHT[rgb >> 8 & 255] + 0.0722f * LIGHT[rgb & 255];
        return code(light) * 0x010101;
    }

    private static int code(float light) {
        return CODE[Math.max(0, Math.min(CODES, Math.round(light * CODES)))];
    }
}
