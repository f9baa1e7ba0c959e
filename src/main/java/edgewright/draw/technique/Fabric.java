package edgewright.draw.technique;

import static edgewright.draw.technique.FigureYarn.LIGHT;

/**
 * Rows of stitches, seen from the right side and a little from above: each stitch ends in two loops, which lie as a V with its
 * point towards the stitch before. The front loop is the lower of the two strands, the back loop the upper one.
 */
final class Fabric {
    /** From row to row, in stitches. */
    static final double ROW = 1.25;

    private static final double BELLY = 0.235;
    static final double POST = 0.215;

    private final FigureBoard board;

    Fabric(FigureBoard board) {
        this.board = board;
    }

    /** The back loop of the stitch whose V has its middle there. */
    void back(FigureYarn yarn, double a, double o) {
        leg(board, yarn, 1, a, o, 1);
    }

    /** The front loop of that stitch. */
    void front(FigureYarn yarn, double a, double o) {
        leg(board, yarn, 1, a, o, -1);
    }

    /** Both loops of a V whose middle is the zero of a turned board. */
    static void back(FigureBoard turned, FigureYarn yarn, double length) {
        leg(turned, yarn, length, 0, 0, 1);
    }

    static void front(FigureBoard turned, FigureYarn yarn, double length) {
        leg(turned, yarn, length, 0, 0, -1);
    }

    private static void leg(FigureBoard board, FigureYarn yarn, double l, double a, double o, double up) {
        double b = BELLY * up;
        board.strand(
                yarn,
                a - 0.58 * l,
                o + 0.03 * up,
                a - 0.3 * l,
                o + 0.72 * b,
                a + 0.1 * l,
                o + b,
                a + 0.45 * l,
                o + 0.72 * b,
                a + 0.6 * l,
                o + 0.12 * b);
    }

    /** The two strands of a stitch that stands on a loop: drawn up from its foot to its top, which its front loop hides. */
    void post(FigureYarn yarn, double foot, double footOut, double top, double topOut) {
        double end = topOut - 0.2;
        double h = end - footOut;
        double lean = foot - top;
        board.thick(
                yarn,
                POST,
                top - 0.25,
                end,
                top - 0.25 + lean * 0.25,
                end - 0.35 * h,
                foot - 0.15,
                footOut + 0.22 * h,
                foot,
                footOut,
                foot + 0.15,
                footOut + 0.22 * h,
                top + 0.25 + lean * 0.25,
                end - 0.35 * h,
                top + 0.25,
                end);
    }

    /** A stitch that is so many times as high as one of the base round, from zero up. */
    static void tallPost(FigureBoard at, FigureYarn yarn, double height) {
        double end = height - 0.05;
        double waist = height * 0.6;
        at.thick(yarn, 0.24, -0.2, end, -0.24, waist, -0.12, 0.12, 0, 0.02, 0.12, 0.12, 0.24, waist, 0.2, end);
    }

    /** One of two stitches that end in one top: from its foot towards the other. */
    void joined(FigureYarn yarn, double foot, double footOut, double top, double topOut) {
        double end = topOut - 0.2;
        double h = end - footOut;
        double side = Math.signum(foot - top);
        board.thick(
                yarn,
                0.18,
                top + 0.04 * side,
                end,
                foot * 0.4,
                footOut + 0.55 * h,
                foot - 0.13 * side,
                footOut + 0.2 * h,
                foot,
                footOut,
                foot + 0.14 * side,
                footOut + 0.2 * h,
                foot * 0.75 + 0.06 * side,
                footOut + 0.6 * h,
                top + 0.26 * side,
                end);
    }

    /** Back loops of the stitches from one place to another, a stitch apart. */
    void backs(FigureYarn yarn, double from, double to, double o) {
        for (double a = from; a <= to + 1e-9; a++) {
            back(yarn, a, o);
        }
    }

    /** Front loops of the stitches from one place to another. */
    void fronts(FigureYarn yarn, double from, double to, double o) {
        for (double a = from; a <= to + 1e-9; a++) {
            front(yarn, a, o);
        }
    }

    /** Stitches straight above their feet. */
    void posts(FigureYarn yarn, double from, double to, double footOut, double topOut) {
        for (double a = from; a <= to + 1e-9; a++) {
            post(yarn, a, footOut, a, topOut);
        }
    }

    /** Both loops of the stitches from one place to another. */
    void row(FigureYarn yarn, double from, double to, double o) {
        backs(yarn, from, to, o);
        fronts(yarn, from, to, o);
    }

    /** A chain that leads from one place to another. */
    static void chain(FigureBoard board, double from, double fromOut, double to, double toOut) {
        double along = to - from;
        double out = toOut - fromOut;
        FigureBoard chain =
                board.turned((from + to) / 2, (fromOut + toOut) / 2, Math.toDegrees(Math.atan2(-out, along)));
        double length = Math.hypot(along, out) / 1.18;
        back(chain, LIGHT, length);
        front(chain, LIGHT, length);
    }

    /** A stitch that is yet to be worked, in dashes. */
    static void toCome(FigureBoard at, double height) {
        double end = height - 0.1;
        at.toCome(-0.25, end, -0.15, 0.3 * height, 0, 0, 0.15, 0.3 * height, 0.25, end);
        for (double up : new double[] {1, -1}) {
            at.toCome(-0.58, height + 0.03 * up, -0.1, height + BELLY * up, 0.3, height + BELLY * up, 0.58, height);
        }
    }

    /** A hook with a slip knot on it, the shaft at zero; the hook points along the way of working. */
    static void knotOnHook(FigureBoard at) {
        at.strand(LIGHT, "0.26 -0.02, 0.16 0.24, -0.12 0.26, -0.26 0");
        at.tool(Tools.hook(0.75, 0, 0, 1.65, 0.3));
        at.tail(LIGHT, "0 -0.5, -0.25 -0.72, -0.3 -0.95, -0.25 -1.2");
        at.strand(LIGHT, "0 -0.5, 0.2 -0.7, 0.42 -0.85, 0.5 -1.15");
        at.strand(LIGHT, "0.26 -0.02, 0.2 -0.25, 0 -0.46, -0.18 -0.25, -0.26 0");
        at.ring(LIGHT, 0.13, "-0.13 -0.46, 0 -0.36, 0.13 -0.46, 0 -0.58");
    }

    /** The slip knot that a standing stitch begins with, at the point of its V, and the end of the yarn. */
    static void slipKnot(FigureBoard at) {
        at.tail(LIGHT, "0.05 -0.02, -0.3 0.08, -0.7 -0.06, -1.1 0.02");
        knot(at);
    }

    static void knot(FigureBoard at) {
        at.ring(LIGHT, 0.13, "-0.1 0.12, 0.08 0.16, 0.12 -0.1, -0.06 -0.14");
    }
}
