package edgewright.yarn;

import static java.lang.Math.abs;
import static java.lang.Math.cos;
import static java.lang.Math.exp;
import static java.lang.Math.hypot;
import static java.lang.Math.pow;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;

/**
 * The colour difference CIEDE2000, with all three weights 1: about 1 is what a practised eye just sees. The same in either
 * order.
 *
 * <p>Source: Sharma, Wu, Dalal, The CIEDE2000 color-difference formula, Color Research and Application 30(1), 2005, whose
 * test pairs are in the tests. Names follow the paper.
 */
final class Ciede2000 {
    /** 25 to the power of 7. */
    private static final double POW_25_7 = 6_103_515_625.0;

    private Ciede2000() {}

    static double between(Lab one, Lab two) {
        double meanChroma = (hypot(one.a(), one.b()) + hypot(two.a(), two.b())) / 2;
        double g = 0.5 * (1 - chromaShare(meanChroma));
        double a1 = (1 + g) * one.a();
        double a2 = (1 + g) * two.a();
        double c1 = hypot(a1, one.b());
        double c2 = hypot(a2, two.b());
        double h1 = hue(a1, one.b());
        double h2 = hue(a2, two.b());

        double dL = two.lightness() - one.lightness();
        double dC = c2 - c1;
        double dH = 2 * sqrt(c1 * c2) * sin(toRadians(hueStep(h1, h2, c1 * c2)) / 2);

        double meanL = (one.lightness() + two.lightness()) / 2;
        double meanC = (c1 + c2) / 2;
        double meanH = meanHue(h1, h2, c1 * c2);
        double fromMiddle = pow(meanL - 50, 2);
        double sL = 1 + 0.015 * fromMiddle / sqrt(20 + fromMiddle);
        double sC = 1 + 0.045 * meanC;
        double sH = 1 + 0.015 * meanC * hueWeight(meanH);
        double turn = toRadians(30 * exp(-pow((meanH - 275) / 25, 2)));
        double rT = -2 * chromaShare(meanC) * sin(2 * turn);

        double l = dL / sL;
        double c = dC / sC;
        double h = dH / sH;
        return sqrt(l * l + c * c + h * h + rT * c * h);
    }

    private static double chromaShare(double chroma) {
        double seventh = pow(chroma, 7);
        return sqrt(seventh / (seventh + POW_25_7));
    }

    /** In degrees, from 0 to 360; 0 for greys. */
    private static double hue(double a, double b) {
        double degrees = toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** From one hue to the other the short way round, in degrees. */
    private static double hueStep(double h1, double h2, double chromas) {
        double step = h2 - h1;
        if (chromas == 0) {
            return 0;
        }
        if (step > 180) {
            return step - 360;
        }
        return step < -180 ? step + 360 : step;
    }

    /** The hue half-way on the short way round; a grey has none, so then it is the other one's. */
    private static double meanHue(double h1, double h2, double chromas) {
        double sum = h1 + h2;
        if (chromas == 0) {
            return sum;
        }
        if (abs(h1 - h2) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double hueWeight(double meanHue) {
        return 1
                - 0.17 * cos(toRadians(meanHue - 30))
                + 0.24 * cos(toRadians(2 * meanHue))
                + 0.32 * cos(toRadians(3 * meanHue + 6))
                - 0.20 * cos(toRadians(4 * meanHue - 63));
    }
}
