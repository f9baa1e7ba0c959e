package edgewright.draw.paint;

import edgewright.chart.Colour;

/**
 * How eyes see colours: in full, as brightness alone, or without one of the three kinds of cones. A designer looks through it
 * to find yarns that many people cannot tell apart. It shows what is lost, not what somebody feels.
 *
 * <p>The three kinds are those of Machado, Oliveira and Fernandes, 'A Physiologically-based Model for Simulation of Color
 * Vision Deficiency', IEEE Transactions on Visualization and Computer Graphics 15(6), 2009, doi:10.1109/TVCG.2009.113: their
 * matrices at severity 1, on linear light. Grey is the luminance of WCAG 2 as light.
 */
public enum ColourVision {
    /** All colours as they are. */
    FULL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    /** Brightness alone, as a copier prints it. */
    GREY(0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722),
    /** Without the cones for long waves: red looks dark, and red and green alike. */
    PROTAN(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    /** Without the cones for middle waves: red and green look alike. */
    DEUTAN(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    /** Without the cones for short waves, which is rare: blue and green look alike. */
    TRITAN(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

    /** Fine enough that every channel comes back as it was. */
    private static final int LIGHT_STEPS = 1 << 14;

    private static final byte[] CHANNELS = channels();

    @SuppressWarnings("ImmutableEnumChecker") // nobody writes into it
    private final float[] matrix;

    ColourVision(double... matrix) {
        this.matrix = new float[matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            this.matrix[i] = (float) matrix[i];
        }
    }

    /** What a colour looks like. */
    public Colour seen(Colour colour) {
        return new Colour(seen(colour.rgb()));
    }

    /** What a colour of 24 bits looks like; bits above them are left out. */
    public int seen(int rgb) {
        if (this == FULL) {
            return rgb & 0xffffff;
        }
        float red = (float) Colour.linear(rgb >> 16 & 0xff);
        float green = (float) Colour.linear(rgb >> 8 & 0xff);
        float blue = (float) Colour.linear(rgb & 0xff);
        return channel(0, red, green, blue) << 16 | channel(3, red, green, blue) << 8 | channel(6, red, green, blue);
    }

    /** Has these pixels, of 24 bits each, look as they are seen; in a picture of few colours each is worked out only once. */
    public void see(int[] pixels) {
        int last = -1;
        int seen = -1;
        for (int i = 0; i < pixels.length; i++) {
            int rgb = pixels[i] & 0xffffff;
            if (rgb != last) {
                last = rgb;
                seen = seen(rgb);
            }
            pixels[i] = seen;
        }
    }

    private int channel(int row, float red, float green, float blue) {
        float light = matrix[row] * red + matrix[row + 1] * green + matrix[row + 2] * blue;
        return CHANNELS[Math.round(Math.max(0, Math.min(1, light)) * LIGHT_STEPS)] & 0xff;
    }

    /** The channel for each step of light. Source: IEC 61966-2-1, from memory. */
    private static byte[] channels() {
        byte[] channels = new byte[LIGHT_STEPS + 1];
        for (int i = 0; i <= LIGHT_STEPS; i++) {
            double light = (double) i / LIGHT_STEPS;
            double part = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
            channels[i] = (byte) Math.round(255 * part);
        }
        return channels;
    }
}
