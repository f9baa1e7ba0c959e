package edgewright.draw.technique;

import edgewright.draw.paint.Frame;
import edgewright.draw.paint.PenPath;

/** The outlines of hook and needle. */
final class Tools {
    private static final double MARKER_WIRE = 0.13;

    private Tools() {}

    /**
     * A crochet hook, its throat to the left of its way.
     *
     * @param along where its tip lies
     * @param out where its tip lies
     * @param degrees the way it points: 0 along the way of working, 90 away from the piece
     * @param length how long the drawn part is, in stitches
     * @param size how thick the shaft is, in stitches
     */
    static PenPath hook(double along, double out, double degrees, double length, double size) {
        double s = size / 2;
        // from the tip backwards: x is behind the tip, y is to the side
        PenPath local = new PenPath.Builder()
                .moveTo(length - s, -s)
                .lineTo(1.5 * size, -s)
                .curveTo(0.7 * size, -s, 0.25 * size, -0.75 * s, 0, 0)
                .curveTo(-0.04 * size, 0.35 * s, 0.02 * size, 0.9 * s, 0.18 * size, 0.98 * s)
                .curveTo(0.5 * size, 1.1 * s, 0.75 * size, 0.72 * s, 0.95 * size, 0.22 * s)
                .curveTo(1.05 * size, -0.05 * s, 1.25 * size, -0.08 * s, 1.4 * size, 0.2 * s)
                .curveTo(1.6 * size, 0.7 * s, 1.9 * size, s, 2.5 * size, s)
                .lineTo(length - s, s)
                .curveTo(length + 0.3 * s, s, length + 0.3 * s, -s, length - s, -s)
                .close()
                .build();
        return local.through(turned(along, out, degrees));
    }

    /** A blunt needle with its eye. */
    static PenPath needle(double along, double out, double degrees, double length, double size) {
        double s = size / 2;
        PenPath local = new PenPath.Builder()
                .moveTo(0, 0)
                .curveTo(0, 0.7 * s, 0.6 * size, s, 1.6 * size, s)
                .lineTo(length - size, s)
                .curveTo(length, s, length, -s, length - size, -s)
                .lineTo(1.6 * size, -s)
                .curveTo(0.6 * size, -s, 0, -0.7 * s, 0, 0)
                .close()
                .moveTo(length - 0.7 * size, 0)
                .curveTo(length - 0.7 * size, 0.5 * s, length - 2.6 * size, 0.5 * s, length - 2.6 * size, 0)
                .curveTo(length - 2.6 * size, -0.5 * s, length - 0.7 * size, -0.5 * s, length - 0.7 * size, 0)
                .close()
                .build();
        return local.through(turned(along, out, degrees));
    }

    /**
     * A stitch marker: a bent wire that is closed with a clasp.
     *
     * @param along where its middle lies
     * @param out where its middle lies
     */
    static PenPath marker(double along, double out, double width, double height) {
        double w = width / 2;
        double h = height / 2;
        PenPath.Builder path = new PenPath.Builder();
        for (double inset : new double[] {0, MARKER_WIRE}) {
            double x = w - inset;
            double top = h - inset + MARKER_WIRE;
            double bottom = inset - h;
            path.moveTo(-x, 0)
                    .curveTo(-x, top * 1.3, x, top * 1.3, x, 0)
                    .lineTo(x, bottom)
                    .lineTo(-x, bottom)
                    .close();
        }
        return path.build().through(new Frame(along, out, 1, 0, 0, 1));
    }

    private static Frame turned(double along, double out, double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double d = Math.sin(Math.toRadians(degrees));
        return new Frame(along, out, -c, -d, -d, c);
    }
}
