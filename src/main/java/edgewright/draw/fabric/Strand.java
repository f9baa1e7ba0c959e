package edgewright.draw.fabric;

import edgewright.draw.paint.PenPath;

/**
 * A strand of yarn as it lies in a cell one wide: a cubic curve and how thick the yarn seems along it. The first axis is the way
 * of working, the second leads away from the piece; zero is the middle of the cell.
 *
 * @param points the start, two handles and the end of the curve: along, out, along, out and so on
 * @param start half the thickness near the start
 * @param middle half the thickness halfway
 * @param end half the thickness near the end
 */
@SuppressWarnings("ArrayRecordComponent") // eight numbers, never handed on
record Strand(double[] points, double start, double middle, double end) {
    /** Nothing of a stitch lies farther from the middle of its cell: its loops reach a little into those beside it. */
    static final double EDGE = 0.6;

    /** A strand that ends this far beyond its cell is meant to; one that ends nearer is only a little askew. */
    private static final double ASKEW = 0.1;

    /** How blunt the ends are: 2 would be an oval. */
    private static final double BLUNT = 3.2;

    /** How far apart the grooves between two plies are, in parts of half the thickness. */
    private static final double PLY = 0.72;

    /** How wide a groove is. */
    static final double GROOVE = 0.026;

    /** How far a groove runs along the strand while it crosses it, in parts of half the thickness. */
    private static final double PLY_SLANT = 0.9;

    static Strand of(double thick, double... points) {
        return new Strand(points, thick / 2, thick / 2, thick / 2);
    }

    /** The strand with other thicknesses. */
    Strand thick(double newStart, double newMiddle, double newEnd) {
        return new Strand(points, newStart / 2, newMiddle / 2, newEnd / 2);
    }

    /**
     * A strand beside a part of this one.
     *
     * @param asideFrom how far it lies on the left of this one where it starts, looking along
     * @param asideBetween the same on the way
     * @param asideTo how far it lies on the left of this one where it ends, looking along
     */
    Strand along(double from, double to, double asideFrom, double asideBetween, double asideTo) {
        double third = (to - from) / 3;
        double[] curve = new double[8];
        for (int i = 0; i < 4; i++) {
            // Through four points on the curve; the two inner ones are turned into handles below.
            double t = from + i * third;
            double aside = i == 0 ? asideFrom : i == 3 ? asideTo : asideBetween;
            double norm = Math.hypot(dx(t), dy(t));
            curve[2 * i] = x(t) - aside * dy(t) / norm;
            curve[2 * i + 1] = y(t) + aside * dx(t) / norm;
        }
        double[] handles = curve.clone();
        for (int axis = 0; axis < 2; axis++) {
            double a = curve[axis];
            double b = curve[2 + axis];
            double c = curve[4 + axis];
            double d = curve[6 + axis];
            handles[2 + axis] = (-5 * a + 18 * b - 9 * c + 2 * d) / 6;
            handles[4 + axis] = (2 * a - 9 * b + 18 * c - 5 * d) / 6;
        }
        return new Strand(handles, start, middle, end);
    }

    /**
     * The outline of the strand, or of a part of it that lies within.
     *
     * @param part how wide the part is: 1 for the whole strand
     * @param along how far it is moved along the first axis
     * @param out how far it is moved along the second axis
     * @param steps into how many pieces each side is cut
     */
    PenPath outline(double part, double along, double out, int steps) {
        double inset = (1 - part) * middle / length();
        double[] xs = new double[2 * steps];
        double[] ys = new double[2 * steps];
        for (int i = 0; i < steps; i++) {
            // Points lie closer to each other at the ends, which are round.
            double even = (1 - Math.cos(Math.PI * (i + 0.5) / steps)) / 2;
            double t = inset + (1 - 2 * inset) * even;
            double half = part * thickness(t) * blunt(even);
            double nx = -dy(t);
            double ny = dx(t);
            double norm = Math.hypot(nx, ny);
            xs[i] = within(x(t) + along + half * nx / norm);
            ys[i] = upright(y(t) + out + half * ny / norm);
            xs[2 * steps - 1 - i] = within(x(t) + along - half * nx / norm);
            ys[2 * steps - 1 - i] = upright(y(t) + out - half * ny / norm);
        }
        return smooth(xs, ys);
    }

    /** The grooves between the plies, each a short line across the strand. */
    PenPath grooves() {
        PenPath.Builder path = new PenPath.Builder();
        int count = Math.max(2, (int) Math.round(length() / (2 * PLY * middle)));
        double slant = PLY_SLANT * middle / length();
        for (int i = 0; i < count; i++) {
            double t = (i + 0.5) / count;
            double before = Math.max(0.02, t - slant);
            double after = Math.min(0.98, t + slant);
            double[] from = beside(before, 0.8);
            double[] bend = beside(before + 0.3 * (after - before), 0.25);
            double[] bow = beside(after - 0.3 * (after - before), -0.25);
            double[] to = beside(after, -0.8);
            path.moveTo(from[0], from[1]).curveTo(bend[0], bend[1], bow[0], bow[1], to[0], to[1]);
        }
        return path.build();
    }

    private double[] beside(double t, double part) {
        double nx = -dy(t);
        double ny = dx(t);
        double norm = Math.hypot(nx, ny);
        double half = part * thickness(t) * blunt(t);
        return new double[] {inside(x(t) + half * nx / norm), insideUpright(y(t) + half * ny / norm)};
    }

    private double thickness(double t) {
        // A parabola through the three thicknesses.
        double s = 1 - t;
        return start * s * (1 - 2 * t) + 4 * middle * s * t + end * t * (2 * t - 1);
    }

    private static double blunt(double t) {
        return Math.pow(Math.max(0, 1 - Math.pow(Math.abs(2 * t - 1), BLUNT)), 1 / BLUNT);
    }

    private double upright(double out) {
        return Math.max(lowest(), Math.min(EDGE, out));
    }

    private static double within(double along) {
        return Math.max(-EDGE, Math.min(EDGE, along));
    }

    /** Grooves are lines and stay in their room with all their width. */
    private static double inside(double along) {
        return Math.max(GROOVE - EDGE, Math.min(EDGE - GROOVE, along));
    }

    private double insideUpright(double out) {
        return Math.max(lowest() + GROOVE, Math.min(EDGE - GROOVE, out));
    }

    /** Where the room of the strand ends towards the piece: with its cell, or with the cell below if it reaches down there. */
    private double lowest() {
        return Math.min(points[1], points[7]) < -EDGE - ASKEW ? -EDGE - 1 : -EDGE;
    }

    private double length() {
        double length = 0;
        int pieces = 8;
        for (int i = 0; i < pieces; i++) {
            double from = (double) i / pieces;
            double to = (i + 1.0) / pieces;
            length += Math.hypot(x(to) - x(from), y(to) - y(from));
        }
        return length;
    }

    private double x(double t) {
        return at(t, 0);
    }

    private double y(double t) {
        return at(t, 1);
    }

    private double at(double t, int axis) {
        double s = 1 - t;
        return s * s * s * points[axis]
                + 3 * s * s * t * points[2 + axis]
                + 3 * s * t * t * points[4 + axis]
                + t * t * t * points[6 + axis];
    }

    private double dx(double t) {
        return slope(t, 0);
    }

    private double dy(double t) {
        return slope(t, 1);
    }

    private double slope(double t, int axis) {
        double s = 1 - t;
        return 3 * s * s * (points[2 + axis] - points[axis])
                + 6 * s * t * (points[4 + axis] - points[2 + axis])
                + 3 * t * t * (points[6 + axis] - points[4 + axis]);
    }

    /** A closed curve through points: handles lie a sixth of the way between a point's two neighbours. */
    private PenPath smooth(double[] xs, double[] ys) {
        int n = xs.length;
        PenPath.Builder path = new PenPath.Builder().moveTo(xs[0], ys[0]);
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            int next = (i + 1) % n;
            int after = (i + 2) % n;
            path.curveTo(
                    within(xs[i] + (xs[next] - xs[before]) / 6),
                    upright(ys[i] + (ys[next] - ys[before]) / 6),
                    within(xs[next] - (xs[after] - xs[i]) / 6),
                    upright(ys[next] - (ys[after] - ys[i]) / 6),
                    xs[next],
                    ys[next]);
        }
        return path.close().build();
    }
}
