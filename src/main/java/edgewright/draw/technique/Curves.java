package edgewright.draw.technique;

import edgewright.draw.paint.PenPath;
import java.util.Arrays;

/** Smooth lines through given points: cubic curves whose handles lie along the way from the point before to the point after. */
final class Curves {
    private Curves() {}

    /** Pairs of numbers with a blank in each pair, parted by commas, as one row of numbers. */
    static double[] places(String text) {
        return Arrays.stream(text.split("[, ]+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    /**
     * A smooth line.
     *
     * @param places pairs of numbers, at least two pairs
     * @param closed whether it comes back to the first
     */
    static PenPath through(double[] places, boolean closed) {
        int n = places.length / 2;
        PenPath.Builder path = new PenPath.Builder().moveTo(places[0], places[1]);
        int curves = closed ? n : n - 1;
        for (int i = 0; i < curves; i++) {
            double[] a = at(places, i - 1, closed);
            double[] b = at(places, i, closed);
            double[] c = at(places, i + 1, closed);
            double[] d = at(places, i + 2, closed);
            path.curveTo(
                    b[0] + (c[0] - a[0]) / 6,
                    b[1] + (c[1] - a[1]) / 6,
                    c[0] - (d[0] - b[0]) / 6,
                    c[1] - (d[1] - b[1]) / 6,
                    c[0],
                    c[1]);
        }
        if (closed) {
            path.close();
        }
        return path.build();
    }

    /** The point from which the line comes to its end. */
    static double[] before(double[] places) {
        int n = places.length / 2;
        double[] b = at(places, n - 2, false);
        double[] c = at(places, n - 1, false);
        double[] a = at(places, n - 3, false);
        return new double[] {
            c[0] - (c[0] - b[0]) / 2 + (b[0] - a[0]) / 12, c[1] - (c[1] - b[1]) / 2 + (b[1] - a[1]) / 12
        };
    }

    private static double[] at(double[] places, int index, boolean closed) {
        int n = places.length / 2;
        int i = closed ? Math.floorMod(index, n) : Math.max(0, Math.min(n - 1, index));
        return new double[] {places[2 * i], places[2 * i + 1]};
    }
}
