package edgewright.draw.technique;

import static edgewright.draw.technique.FigureYarn.DARK;
import static edgewright.draw.technique.FigureYarn.LIGHT;
import static edgewright.draw.technique.FigureYarn.TAKEN;

/** The figures of how a round comes to have a stitch more or a stitch fewer; the change is in the middle. */
final class ChangeFigures {
    private static final double LOW = -0.8;
    private static final double HIGH = LOW + Fabric.ROW + 0.15;
    private static final int BESIDE = 3;

    private final FigureBoard board;
    private final Fabric fabric;
    private final boolean bothLoops;
    private final double foot;

    /** @param bothLoops whether the stitches go through both loops of those below */
    ChangeFigures(FigureBoard board, boolean bothLoops) {
        this.board = board;
        this.fabric = new Fabric(board);
        this.bothLoops = bothLoops;
        this.foot = bothLoops ? LOW - StitchFigures.UNDER : LOW - 0.02;
    }

    void twoInOne() {
        roundBelow(0);
        beside(0, 0.5);
        fabric.post(LIGHT, -0.1, foot, -0.5, HIGH);
        fabric.post(LIGHT, 0.1, foot, 0.5, HIGH);
        loops(0, 0.5, -0.5, 0.5);
        board.cropAcross(-3.45, 3.45);
        board.number(1, -0.5, HIGH + 0.72);
        board.number(2, 0.5, HIGH + 0.72);
    }

    void twoTogether() {
        roundBelow(0.5);
        beside(0.5, -0.5);
        fabric.joined(LIGHT, -0.5, foot, 0.02, HIGH);
        fabric.joined(LIGHT, 0.5, foot, -0.02, HIGH);
        loops(0.5, -0.5, 0);
        board.cropAcross(-3.8, 3.8);
        board.number(1, -0.5, LOW - 0.9);
        board.number(2, 0.5, LOW - 0.9);
        board.number(3, 0, HIGH + 0.75);
    }

    /** @param nearest how far from the middle the nearest stitch is: 0, or 0.5 where there are two */
    private void roundBelow(double nearest) {
        double edge = BESIDE + 0.5 + nearest;
        board.ground(DARK, -edge, LOW - 1.1, edge, LOW + 0.15);
        board.ground(LIGHT, -edge, LOW + 0.2, edge, HIGH + 0.15);
        fabric.posts(DARK, -BESIDE - nearest, BESIDE + nearest, LOW - 1.2, LOW);
        board.cropBelow(LOW - 1.1);
        for (double a = -BESIDE - nearest; a <= BESIDE + nearest; a++) {
            fabric.back(ofBelow(a, nearest), a, LOW);
            if (bothLoops) {
                fabric.front(ofBelow(a, nearest), a, LOW);
            }
        }
    }

    private static FigureYarn ofBelow(double a, double nearest) {
        return Math.abs(a) == nearest ? TAKEN : DARK;
    }

    /** The stitches at both sides, which make room. */
    private void beside(double nearest, double room) {
        for (int i = 1; i <= BESIDE; i++) {
            double a = i + nearest;
            fabric.post(LIGHT, -a, foot, -a - spread(i, room), HIGH);
            fabric.post(LIGHT, a, foot, a + spread(i, room), HIGH);
        }
    }

    private static double spread(int place, double room) {
        return room * (1 - (place - 1) / 3.0);
    }

    private void loops(double nearest, double room, double... middle) {
        if (!bothLoops) {
            fabric.fronts(DARK, -BESIDE - nearest, BESIDE + nearest, LOW);
        }
        double[] all = new double[2 * BESIDE + middle.length];
        for (int i = 1; i <= BESIDE; i++) {
            double a = i + nearest + spread(i, room);
            all[BESIDE - i] = -a;
            all[BESIDE + middle.length - 1 + i] = a;
        }
        System.arraycopy(middle, 0, all, BESIDE, middle.length);
        for (double a : all) {
            fabric.back(LIGHT, a, HIGH);
        }
        for (double a : all) {
            fabric.front(LIGHT, a, HIGH);
        }
    }
}
