package edgewright.words;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads a round in which stitches are added or lost, side by side. */
final class ChangesReader {
    private static final String BETWEEN = ",;.";

    private final Cursor cursor;
    private final RoundReader round;

    ChangesReader(Cursor cursor, RoundReader round) {
        this.cursor = cursor;
        this.round = round;
    }

    /** What was read, and the chains of its corners. */
    record Read(ChangedSides sides, int cornerChains) {}

    /** The four sides in any order; empty if this is another kind of round. */
    Optional<Read> read() {
        boolean announced = cursor.take("putsRight");
        if (announced) {
            cursor.skip(BETWEEN);
            cursor.take("atTheTop");
            cursor.skip(BETWEEN);
        }
        if (!announced && !cursor.is("along")) {
            return Optional.empty();
        }
        List<List<SideWork>> sides = new ArrayList<>(Arrays.asList(null, null, null, null));
        OptionalInt chains = OptionalInt.empty();
        for (int i = 0; i < sides.size(); i++) {
            cursor.require("along", "along");
            Token named = cursor.peek();
            Side side = round.edge();
            if (sides.get(side.ordinal()) != null) {
                throw cursor.stopAt(named, "otherWords");
            }
            cursor.skip(BETWEEN);
            cursor.take("from");
            cursor.skip(":");
            sides.set(side.ordinal(), upToTheCorner());
            Token corner = cursor.peek();
            int here = round.corner();
            if (chains.orElse(here) != here) {
                throw cursor.stopAt(corner, "chainsAsBefore", chains.getAsInt());
            }
            chains = OptionalInt.of(here);
            cursor.skip(BETWEEN);
        }
        return Optional.of(new Read(new ChangedSides(sides), chains.getAsInt()));
    }

    private List<SideWork> upToTheCorner() {
        List<SideWork> work = new ArrayList<>();
        cursor.skip(BETWEEN);
        while (!cursor.is("corner") || work.isEmpty()) {
            if (cursor.takeSign("(")) {
                work.add(times());
            } else {
                work.add(step());
            }
            cursor.skip(BETWEEN);
        }
        return work;
    }

    private SideWork times() {
        List<SideWork> steps = new ArrayList<>();
        do {
            cursor.skip(BETWEEN);
            steps.add(step());
            cursor.skip(BETWEEN);
        } while (!cursor.takeSign(")"));
        int times = cursor.number(2, "times");
        cursor.require("times", "timesWord");
        return new SideWork.Times(steps, times);
    }

    private SideWork step() {
        Optional<Stitch> together = cursor.takeTogether();
        if (together.isPresent()) {
            return new SideWork.Together(together.get());
        }
        if (!round.isRun()) {
            throw cursor.stop("change");
        }
        Token start = cursor.peek();
        Run run = round.run();
        if (cursor.take("and")) {
            if (run.count() != 1) {
                throw cursor.stopAt(start, "oneAndOne");
            }
            Token next = cursor.peek();
            Run other = round.run();
            if (other.count() != 1) {
                throw cursor.stopAt(next, "oneAndOne");
            }
            cursor.require("inNext", "inNext");
            return new SideWork.TwoInOne(run.stitch(), other.stitch());
        }
        if (!cursor.take("inNext")) {
            return new SideWork.Work(run);
        }
        if (run.count() != 2) {
            throw cursor.stopAt(start, "two");
        }
        return new SideWork.TwoInOne(run.stitch(), run.stitch());
    }
}
