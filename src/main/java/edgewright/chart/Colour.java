package edgewright.chart;

import java.util.Locale;

/**
 * A colour on the screen, sRGB with eight bits a channel.
 *
 * @param rgb red in bits 16 to 23, green in bits 8 to 15, blue in bits 0 to 7; nothing above
 */
public record Colour(int rgb) {
    private static final double[] LINEAR = new double[256];

    static {
        for (int channel = 0; channel < LINEAR.length; channel++) {
            double c = channel / 255.0;
            LINEAR[channel] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
    }

    public Colour {
        if ((rgb & 0xff000000) != 0) {
            throw new IllegalArgumentException("a colour has 24 bits, not " + Integer.toHexString(rgb));
        }
    }

    /** Whether this is a colour written as {@code #rrggbb}, in small or capital letters. */
    public static boolean isColour(String text) {
        return text.matches("#[0-9a-fA-F]{6}");
    }

    /**
     * The colour written as {@code #rrggbb}, in small or capital letters.
     *
     * @throws IllegalArgumentException for anything else
     */
    public static Colour parse(String text) {
        if (!isColour(text)) {
            throw new IllegalArgumentException("'" + text + "': expected a colour as #rrggbb");
        }
        return new Colour(Integer.parseInt(text.substring(1), 16));
    }

    /** The red channel, 0 to 255. */
    public int red() {
        return rgb >> 16;
    }

    /** The green channel, 0 to 255. */
    public int green() {
        return rgb >> 8 & 0xff;
    }

    /** The blue channel, 0 to 255. */
    public int blue() {
        return rgb & 0xff;
    }

    /** The relative luminance, from 0 (black) to 1 (white). Source: https://www.w3.org/TR/WCAG21/#dfn-relative-luminance */
    public double luminance() {
        return 0.2126 * linear(red()) + 0.7152 * linear(green()) + 0.0722 * linear(blue());
    }

    /**
     * The light of a channel from 0 to 1, as it adds up. Source: IEC 61966-2-1, from memory.
     *
     * @param channel 0 to 255
     */
    public static double linear(int channel) {
        return LINEAR[channel];
    }

    /** {@code #rrggbb} in small letters, as in a chart file. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }
}
