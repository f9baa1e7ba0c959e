package edgewright.yarn;

import edgewright.chart.Colour;

/**
 * A colour in CIELAB, the space in which distances come near to what eyes see. White is D65, as for sRGB.
 *
 * @param lightness L*, from 0 (black) to 100 (white)
 * @param a from green (negative) to red (positive)
 * @param b from blue (negative) to yellow (positive)
 */
public record Lab(double lightness, double a, double b) {
    /** D65 as the sum of the columns of {@link #XYZ_OF_RGB}, so that white and all greys get a = b = 0. */
    private static final double[] WHITE = {0.9504559, 1.0, 1.0890578};

    /** From linear sRGB to XYZ. Source: IEC 61966-2-1, from memory; checked in the tests by known colours. */
    private static final double[][] XYZ_OF_RGB = {
        {0.4123908, 0.3575843, 0.1804808}, {0.2126390, 0.7151687, 0.0721923}, {0.0193308, 0.1191948, 0.9505322}
    };

    /** The reverse of {@link #XYZ_OF_RGB}. */
    private static final double[][] RGB_OF_XYZ = {
        {3.2409699, -1.5373832, -0.4986108}, {-0.9692436, 1.8759675, 0.0415551}, {0.0556301, -0.2039770, 1.0569715}
    };

    private static final double EPSILON = 216.0 / 24_389;
    private static final double KAPPA = 24_389.0 / 27;

    /** The colour of a screen in this space. */
    public static Lab of(Colour colour) {
        double[] rgb = {Colour.linear(colour.red()), Colour.linear(colour.green()), Colour.linear(colour.blue())};
        double[] f = new double[3];
        for (int i = 0; i < 3; i++) {
            double t = product(XYZ_OF_RGB[i], rgb) / WHITE[i];
            f[i] = t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
        }
        return new Lab(116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2]));
    }

    /** The nearest colour that a screen can show, channel by channel; not always the nearest to the eye. */
    public Colour toColour() {
        double fy = (lightness + 16) / 116;
        double[] f = {fy + a / 500, fy, fy - b / 200};
        double[] xyz = new double[3];
        for (int i = 0; i < 3; i++) {
            double cube = f[i] * f[i] * f[i];
            xyz[i] = WHITE[i] * (cube > EPSILON ? cube : (116 * f[i] - 16) / KAPPA);
        }
        int rgb = 0;
        for (double[] row : RGB_OF_XYZ) {
            rgb = rgb << 8 | channel(product(row, xyz));
        }
        return new Colour(rgb);
    }

    /** This colour with another lightness. */
    public Lab withLightness(double newLightness) {
        return new Lab(newLightness, a, b);
    }

    private static int channel(double linear) {
        double c = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.max(0, Math.min(255, Math.round(255 * c)));
    }

    private static double product(double[] row, double[] column) {
        return row[0] * column[0] + row[1] * column[1] + row[2] * column[2];
    }
}
