package edgewright.draw.paint;

import java.util.Arrays;

/**
 * A line or an outline in millimetres, x to the right and y down; immutable. Equality is by content.
 *
 * <p>Made of straight lines and cubic curves, in one part or several. A driver follows it with a {@link Pen}.
 */
public final class PenPath {
    /** How far the handles of a curve stand off so that four of them make a circle. */
    private static final double CIRCLE = 0.5522847498;

    private static final byte MOVE = 0;
    private static final byte LINE = 1;
    private static final byte CURVE = 2;
    private static final byte CLOSE = 3;

    private final byte[] steps;
    private final double[] points;

    private PenPath(byte[] steps, double[] points) {
        this.steps = steps;
        this.points = points;
    }

    /** What follows a path, step by step. All numbers are millimetres. */
    public interface Pen {
        /** Starts a part of the path. */
        void moveTo(double xMm, double yMm);

        /** A straight line from where the pen stands. */
        void lineTo(double xMm, double yMm);

        /** A cubic curve from where the pen stands: two handles, then the end. */
        void curveTo(double x1Mm, double y1Mm, double x2Mm, double y2Mm, double xMm, double yMm);

        /** A straight line back to where the part started; that part is now an outline. */
        void close();
    }

    /** A straight line. */
    public static PenPath line(double x1Mm, double y1Mm, double x2Mm, double y2Mm) {
        return new Builder().moveTo(x1Mm, y1Mm).lineTo(x2Mm, y2Mm).build();
    }

    /** The outline of an area. */
    public static PenPath rectangle(Area area) {
        double right = area.xMm() + area.widthMm();
        double bottom = area.yMm() + area.heightMm();
        return new Builder()
                .moveTo(area.xMm(), area.yMm())
                .lineTo(right, area.yMm())
                .lineTo(right, bottom)
                .lineTo(area.xMm(), bottom)
                .close()
                .build();
    }

    /** The outline of an area with its corners rounded off. */
    public static PenPath rounded(Area area, double radiusMm) {
        double r = Math.min(radiusMm, Math.min(area.widthMm(), area.heightMm()) / 2);
        double h = r * (1 - CIRCLE);
        double x0 = area.xMm();
        double y0 = area.yMm();
        double x1 = x0 + area.widthMm();
        double y1 = y0 + area.heightMm();
        return new Builder()
                .moveTo(x0 + r, y0)
                .lineTo(x1 - r, y0)
                .curveTo(x1 - h, y0, x1, y0 + h, x1, y0 + r)
                .lineTo(x1, y1 - r)
                .curveTo(x1, y1 - h, x1 - h, y1, x1 - r, y1)
                .lineTo(x0 + r, y1)
                .curveTo(x0 + h, y1, x0, y1 - h, x0, y1 - r)
                .lineTo(x0, y0 + r)
                .curveTo(x0, y0 + h, x0 + h, y0, x0 + r, y0)
                .close()
                .build();
    }

    /** A circle. */
    public static PenPath circle(double xMm, double yMm, double radiusMm) {
        return oval(xMm, yMm, radiusMm, radiusMm);
    }

    /** An oval that lies level. */
    public static PenPath oval(double xMm, double yMm, double radiusXMm, double radiusYMm) {
        double hx = radiusXMm * CIRCLE;
        double hy = radiusYMm * CIRCLE;
        double left = xMm - radiusXMm;
        double right = xMm + radiusXMm;
        double top = yMm - radiusYMm;
        double bottom = yMm + radiusYMm;
        return new Builder()
                .moveTo(right, yMm)
                .curveTo(right, yMm + hy, xMm + hx, bottom, xMm, bottom)
                .curveTo(xMm - hx, bottom, left, yMm + hy, left, yMm)
                .curveTo(left, yMm - hy, xMm - hx, top, xMm, top)
                .curveTo(xMm + hx, top, right, yMm - hy, right, yMm)
                .close()
                .build();
    }

    /** Leads the pen along this path. */
    public void trace(Pen pen) {
        int at = 0;
        for (byte step : steps) {
            switch (step) {
                case MOVE -> pen.moveTo(points[at++], points[at++]);
                case LINE -> pen.lineTo(points[at++], points[at++]);
                case CURVE ->
                    pen.curveTo(points[at++], points[at++], points[at++], points[at++], points[at++], points[at++]);
                default -> pen.close();
            }
        }
    }

    /** This path under a change of coordinates that keeps straight lines straight. */
    public PenPath through(Frame frame) {
        double[] moved = new double[points.length];
        for (int i = 0; i < points.length; i += 2) {
            moved[i] = frame.xMm(points[i], points[i + 1]);
            moved[i + 1] = frame.yMm(points[i], points[i + 1]);
        }
        return new PenPath(steps, moved);
    }

    /** The smallest area that holds every point and every handle of this path. */
    public Area bounds() {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < points.length; i += 2) {
            left = Math.min(left, points[i]);
            right = Math.max(right, points[i]);
            top = Math.min(top, points[i + 1]);
            bottom = Math.max(bottom, points[i + 1]);
        }
        return new Area(left, top, right - left, bottom - top);
    }

    /**
     * Whether this path is the outline of an upright rectangle or one level or upright line: then {@link #bounds} says all of
     * it, and a driver with pixels can set it on whole ones.
     */
    public boolean isUpright() {
        boolean line = steps.length == 2 && steps[1] == LINE;
        boolean rectangle =
                steps.length == 5 && steps[1] == LINE && steps[2] == LINE && steps[3] == LINE && steps[4] == CLOSE;
        if (!line && !rectangle) {
            return false;
        }
        for (int i = 2; i < points.length; i += 2) {
            if (points[i] != points[i - 2] && points[i + 1] != points[i - 1]) {
                return false;
            }
        }
        return line || points[0] == points[6] || points[1] == points[7];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PenPath that && Arrays.equals(steps, that.steps) && Arrays.equals(points, that.points);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(steps) + Arrays.hashCode(points);
    }

    /** Puts a path together, step by step. All numbers are millimetres, or whatever the path is then moved from. */
    public static final class Builder {
        private byte[] steps = new byte[8];
        private double[] points = new double[16];
        private int stepCount;
        private int pointCount;

        /** Starts a part of the path. */
        public Builder moveTo(double x, double y) {
            return step(MOVE, x, y);
        }

        /** A straight line from where the last step ended. */
        public Builder lineTo(double x, double y) {
            return step(LINE, x, y);
        }

        /** A cubic curve from where the last step ended: two handles, then the end. */
        public Builder curveTo(double x1, double y1, double x2, double y2, double x, double y) {
            return step(CURVE, x1, y1, x2, y2, x, y);
        }

        /** Makes the part an outline. */
        public Builder close() {
            return step(CLOSE);
        }

        /** The path so far. */
        public PenPath build() {
            return new PenPath(Arrays.copyOf(steps, stepCount), Arrays.copyOf(points, pointCount));
        }

        private Builder step(byte step, double... numbers) {
            if (stepCount == 0 && step != MOVE) {
                throw new IllegalStateException("a path starts with moveTo");
            }
            if (stepCount == steps.length) {
                steps = Arrays.copyOf(steps, 2 * stepCount);
            }
            if (pointCount + numbers.length > points.length) {
                points = Arrays.copyOf(points, 2 * points.length);
            }
            steps[stepCount++] = step;
            System.arraycopy(numbers, 0, points, pointCount, numbers.length);
            pointCount += numbers.length;
            return this;
        }
    }
}
