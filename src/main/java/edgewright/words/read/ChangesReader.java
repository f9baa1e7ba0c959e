package edgewright.words.read;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Run;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads a round in which stitches are added or lost, side by side. */
final class ChangesReader {
    private static final String BETWEEN = ",;.";

    private final TokenCursor cursor;
    private final RoundReader round;

    ChangesReader(TokenCursor cursor, RoundReader round) {
        this.cursor = cursor;
        this.round = round;
    }

    /** What was read, and the chains of its corners. */
    record Read(PerSide<List<ChangingStep>> sides, int cornerChains) {}

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
        Map<Side, List<ChangingStep>> sides = new EnumMap<>(Side.class);
        OptionalInt chains = OptionalInt.empty();
        for (int i = 0; i < Side.values().length; i++) {
            cursor.require("along", "along");
            Token named = cursor.peek();
            Side side = round.edge();
            if (sides.containsKey(side)) {
                throw cursor.stopAt(named, "otherWords");
            }
            cursor.skip(BETWEEN);
            cursor.take("from");
            cursor.skip(":");
            sides.put(side, upToTheCorner());
            Token corner = cursor.peek();
            int here = round.corner();
            if (chains.orElse(here) != here) {
                throw cursor.stopAt(corner, "chainsAsBefore", chains.getAsInt());
            }
            chains = OptionalInt.of(here);
            cursor.skip(BETWEEN);
        }
        return Optional.of(new Read(PerSide.each(sides::get), chains.getAsInt()));
    }

    private List<ChangingStep> upToTheCorner() {
        List<ChangingStep> work = new ArrayList<>();
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

    private ChangingStep times() {
        List<ChangingStep> steps = new ArrayList<>();
        do {
            cursor.skip(BETWEEN);
            steps.add(step());
            cursor.skip(BETWEEN);
        } while (!cursor.takeSign(")"));
        int times = cursor.number(2, "times");
        cursor.require("times", "timesWord");
        return new ChangingStep.Times(steps, times);
    }

    private ChangingStep step() {
        Optional<Stitch> together = cursor.takeTogether();
        if (together.isPresent()) {
            return new ChangingStep.Together(together.get());
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
            return new ChangingStep.TwoInOne(run.stitch(), other.stitch());
        }
        if (!cursor.take("inNext")) {
            return new ChangingStep.Work(run);
        }
        if (run.count() != 2) {
            throw cursor.stopAt(start, "two");
        }
        return new ChangingStep.TwoInOne(run.stitch(), run.stitch());
    }
}
