package edgewright.words.read;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.words.tree.ChangingStep;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads a round in which stitches are added or lost, side by side. */
final class ChangesReader {
    private final TokenCursor cursor;
    private final WorkReader work;

    private final Map<Side, List<ChangingStep>> sides = new EnumMap<>(Side.class);
    private OptionalInt chains = OptionalInt.empty();
    private ChangingStep step = new ChangingStep.Together(Stitch.PLAIN);

    ChangesReader(TokenCursor cursor, WorkReader work) {
        this.cursor = cursor;
        this.work = work;
    }

    /** What was read, and the chains of its corners. */
    record Read(PerSide<List<ChangingStep>> sides, int cornerChains) {}

    /** The four sides in any order; empty if this is another kind of round. */
    Optional<Read> read() {
        boolean announced = cursor.take("puts-right");
        cursor.skipPartings();
        for (int i = 0; i < Side.values().length; i++) {
            if (!takeSide()) {
                if (i == 0 && !announced && !cursor.opens("along")) {
                    return Optional.empty();
                }
                throw cursor.stopped();
            }
            cursor.skipPartings();
        }
        return Optional.of(new Read(PerSide.each(sides::get), chains.getAsInt()));
    }

    private boolean takeSide() {
        List<ChangingStep> steps = new ArrayList<>();
        Side[] named = new Side[1];
        boolean taken = cursor.take("along", gap -> switch (gap) {
            case "edge" -> {
                named[0] = takeOtherEdge();
                yield named[0] != null;
            }
            case "steps" -> takeSteps(steps, true);
            case "corner" -> takeCorner();
            default -> throw Phrase.unknown(gap);
        });
        if (taken) {
            sides.put(named[0], steps);
        }
        return taken;
    }

    /** An edge that has no words yet; null if none stands here. */
    private Side takeOtherEdge() {
        Token start = cursor.peek();
        Optional<Side> side = work.takeEdge();
        if (side.filter(sides::containsKey).isPresent()) {
            throw cursor.stopAt(start, Expectation.of("otherWords"));
        }
        return side.orElse(null);
    }

    private boolean takeCorner() {
        Token corner = cursor.peek();
        if (!work.takeCornerAlone()) {
            return cursor.miss("change");
        }
        if (chains.orElse(work.chains()) != work.chains()) {
            throw cursor.stopAt(corner, Expectation.of("chainsAsBefore", chains.getAsInt()));
        }
        chains = OptionalInt.of(work.chains());
        return true;
    }

    private boolean takeSteps(List<ChangingStep> steps, boolean mayRepeat) {
        steps.clear();
        int mark = cursor.mark();
        while ((mayRepeat && takeTimes()) || takeStep()) {
            steps.add(step);
            mark = cursor.mark();
            if (!cursor.between("runs-next")) {
                break;
            }
        }
        cursor.reset(mark);
        if (steps.isEmpty()) {
            cursor.miss("change");
        }
        return !steps.isEmpty();
    }

    private boolean takeTimes() {
        List<ChangingStep> steps = new ArrayList<>();
        int[] times = new int[1];
        boolean taken = cursor.take("bracket", gap -> switch (gap) {
            case "steps" -> takeSteps(steps, false);
            case "times" -> {
                times[0] = work.takeTimes();
                yield times[0] > 0;
            }
            default -> throw Phrase.unknown(gap);
        });
        if (taken) {
            step = new ChangingStep.Times(steps, times[0]);
        }
        return taken;
    }

    private boolean takeStep() {
        Optional<Stitch> together = cursor.takeTogether();
        if (together.isPresent()) {
            step = new ChangingStep.Together(together.get());
            return true;
        }
        return takeOneAndOne() || takeTwoInOne() || takeWork();
    }

    private boolean takeOneAndOne() {
        Stitch[] made = new Stitch[2];
        Token[] starts = new Token[2];
        int[] counts = new int[2];
        boolean taken = cursor.take("one-and-one", gap -> {
            int i = switch (gap) {
                case "first" -> 0;
                case "second" -> 1;
                default -> throw Phrase.unknown(gap);
            };
            starts[i] = cursor.peek();
            if (!work.takeRun()) {
                return false;
            }
            counts[i] = work.run().count();
            made[i] = work.run().stitch();
            return true;
        });
        if (!taken) {
            return false;
        }
        for (int i = 0; i < made.length; i++) {
            if (counts[i] != 1) {
                throw cursor.stopAt(starts[i], Expectation.of("oneAndOne"));
            }
        }
        step = new ChangingStep.TwoInOne(made[0], made[1]);
        return true;
    }

    private boolean takeTwoInOne() {
        Token start = cursor.peek();
        if (!cursor.take("two-in-one", this::takeRun)) {
            return false;
        }
        if (work.run().count() != 2) {
            throw cursor.stopAt(start, Expectation.of("two"));
        }
        step = new ChangingStep.TwoInOne(work.run().stitch(), work.run().stitch());
        return true;
    }

    private boolean takeRun(String gap) {
        if (!gap.equals("run")) {
            throw Phrase.unknown(gap);
        }
        return work.takeRun();
    }

    private boolean takeWork() {
        boolean taken = work.takeRun();
        if (taken) {
            step = new ChangingStep.Work(work.run());
        }
        return taken;
    }
}
