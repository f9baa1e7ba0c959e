package edgewright.draw.technique;

import static edgewright.draw.technique.FigureYarn.DARK;
import static edgewright.draw.technique.FigureYarn.LIGHT;
import static edgewright.draw.technique.FigureYarn.TAKEN;

import edgewright.chart.Technique.Join;
import edgewright.draw.paint.PenPath;

/**
 * The figures of a corner, as it lies flat: a side comes to the point of the corner, which is zero, and the next side goes on at
 * a right angle.
 */
final class CornerFigures {
    /** How far from the point of the corner the chains begin, for each number of chains. */
    private static final double[] RADIUS = {0, 0.85, 1.15, 1.6};

    /** From round to round. */
    private static final double ROUND = 1.25;

    private final FigureBoard board;
    private final int chains;
    private final double radius;
    private final boolean bothLoops;
    private final int before;
    private final int after;

    /**
     * @param bothLoops whether the stitches go through both loops of those below
     * @param before how much room there is for the side before the corner, in stitches
     * @param after how much room there is for the side after it
     */
    CornerFigures(FigureBoard board, int chains, boolean bothLoops, double before, double after) {
        this.board = board;
        this.chains = chains;
        this.radius = RADIUS[chains];
        this.bothLoops = bothLoops;
        this.before = (int) (before - radius);
        this.after = (int) (after - radius);
    }

    void corner() {
        below();
        double end = ROUND - radius - 0.35;
        board.ground(LIGHT, -reach(before), 0.2, end, ROUND + 0.15);
        board.ground(LIGHT, 0.2, -reach(after), ROUND + 0.15, end);
        onRoundBelow(true, () -> {
            for (int i = 0; i <= before; i++) {
                stitch(false, i);
            }
            for (int i = 0; i <= after; i++) {
                stitch(true, i);
            }
        });
        loops(LIGHT, ROUND, true, true);
        loops(LIGHT, ROUND, false, true);
        board.cropOutside(-reach(before), -reach(after));
        board.number(1, ROUND - radius - 0.5, ROUND + 0.62);
        double tip = ROUND - radius * 0.29 + 0.42;
        board.number(2, tip, tip);
        board.number(3, ROUND + 0.62, ROUND - radius - 0.5);
        board.arrow(-3.2, ROUND + 0.62, -2.2, ROUND + 0.62);
    }

    /** Stitches between the loops that they stand on, or in front of both. */
    private void onRoundBelow(boolean endsSide, Runnable stitches) {
        loops(DARK, 0, true, endsSide);
        if (bothLoops) {
            loops(DARK, 0, false, endsSide);
            stitches.run();
        } else {
            stitches.run();
            loops(DARK, 0, false, endsSide);
        }
    }

    /** Where the drawn part of a side ends. */
    private double reach(int stitches) {
        return radius + stitches - 0.2;
    }

    /** The first stitches after a corner; the side before it is not yet worked. */
    void start(Join join) {
        below();
        double first = ROUND - radius - 0.5;
        board.ground(LIGHT, 0.2, first - after + 0.4, ROUND + 0.15, first + 0.15);
        board.at(ROUND, first - after + 0.4).strand(LIGHT, "0 0, 0.2 -0.5, 0.3 -1");
        double last = Math.toRadians(90.0 * (chains - 0.5) / chains);
        double x = radius * (Math.sin(last) - 1);
        double y = radius * (Math.cos(last) - 1);
        if (join != Join.STANDING) {
            board.at(x, y).tail(LIGHT, "0.1 0.05, 0.5 0.5, 0.7 0.9, 0.65 1.3");
        }
        onRoundBelow(false, () -> {
            for (int i = 0; i < after; i++) {
                stitch(true, i);
            }
            begun(join, x, y, first + 0.55);
        });
        for (boolean back : new boolean[] {true, false}) {
            for (int i = 0; i < after; i++) {
                leg(arm(ROUND, true, 0.5 + i), LIGHT, 1, back);
            }
        }
        board.cropOutside(-reach(before), -reach(after));
        if (join != Join.STANDING) {
            board.number(1, x - 0.6, y - 0.1);
        }
        board.number(2, ROUND + 0.62, first);
    }

    /** What stands before the first stitch, in the last chain of the corner. */
    private void begun(Join join, double x, double y, double top) {
        switch (join) {
            case CHAIN -> Fabric.chain(board, x + 0.05, y + 0.1, ROUND, top);
            case SLIP -> {
                board.at(x, y).ring(LIGHT, 0.15, "-0.05 0.3, 0.2 0.05, 0.4 0.25, 0.15 0.4");
                Fabric.chain(board, x + 0.3, y + 0.25, ROUND, top);
            }
            case STANDING -> Fabric.slipKnot(board.turned(ROUND, top, 90));
        }
    }

    private void below() {
        double r = radius + 0.05;
        double c = 0.448 * r;
        board.ground(
                DARK,
                new PenPath.Builder()
                        .moveTo(-reach(before), -reach(after))
                        .lineTo(-reach(before), 0.1)
                        .lineTo(-radius, 0.1)
                        .curveTo(-radius + 0.552 * r, 0.1, 0.1, -c, 0.1, -radius)
                        .lineTo(0.1, -reach(after))
                        .close()
                        .build());
        for (int i = 0; i < before; i++) {
            new Fabric(arm(0, false, 0.5 + i)).post(DARK, -0.1, -1.1, 0, 0);
        }
        for (int i = 0; i < after; i++) {
            new Fabric(arm(0, true, 0.5 + i)).post(DARK, 0.1, -1.1, 0, 0);
        }
    }

    /**
     * The light stitch of a side, by its number from the corner.
     *
     * @param next whether it is of the side that comes after the corner
     */
    private void stitch(boolean next, int number) {
        double top = ROUND - radius - 0.5 - number;
        double foot = -radius + 0.5 - number;
        double inwards = bothLoops ? 0.33 : 0.02;
        double footOut = -inwards;
        if (number == 0) {
            double angle = chains == 1 ? 32 : 90.0 * 0.5 / chains;
            foot = (radius - inwards) * Math.sin(Math.toRadians(angle)) - radius;
            footOut = (radius - inwards) * Math.cos(Math.toRadians(angle)) - radius;
        }
        FigureBoard side = next ? board.turned(0, 0, 90) : board;
        int mirror = next ? -1 : 1;
        new Fabric(side).post(LIGHT, mirror * foot, footOut, mirror * top, ROUND);
    }

    private FigureBoard arm(double k, boolean next, double fromCorner) {
        double along = k - radius - fromCorner;
        return next ? board.turned(k, along, 90) : board.at(along, k);
    }

    private FigureBoard chain(double k, int i) {
        double angle = 90.0 * (i + 0.5) / chains;
        double x = k - radius + radius * Math.sin(Math.toRadians(angle));
        double y = k - radius + radius * Math.cos(Math.toRadians(angle));
        return board.turned(x, y, angle);
    }

    /** @param endsSide whether a side ends in this corner, so that its first chain is worked into as well */
    private void loops(FigureYarn yarn, double k, boolean back, boolean endsSide) {
        int more = yarn == LIGHT ? 1 : 0;
        for (int i = before - 1 + more; i >= 0; i--) {
            leg(arm(k, false, 0.5 + i), yarn, 1, back);
        }
        for (int i = 0; i < chains; i++) {
            boolean taken = yarn == DARK && (back || bothLoops) && (i == chains - 1 || (i == 0 && endsSide));
            leg(chain(k, i), taken ? TAKEN : yarn, 1.05 * Math.PI / 2 * radius / chains, back);
        }
        for (int i = 0; i < after + more; i++) {
            leg(arm(k, true, 0.5 + i), yarn, 1, back);
        }
    }

    private static void leg(FigureBoard at, FigureYarn yarn, double length, boolean back) {
        if (back) {
            Fabric.back(at, yarn, length);
        } else {
            Fabric.front(at, yarn, length);
        }
    }
}
