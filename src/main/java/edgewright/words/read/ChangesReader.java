package edgewright.words.read;

import edgewright.chart.Stitch;
import edgewright.words.tree.ChangingStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a round in which stitches are added or lost, side by side. */
final class ChangesReader {
    private final TokenCursor cursor;
    private final WorkReader work;

    private ChangingStep step = new ChangingStep.Together(Stitch.PLAIN);

    ChangesReader(TokenCursor cursor, WorkReader work) {
        this.cursor = cursor;
        this.work = work;
    }

    /** Whether a round says from here on that it adds or loses stitches, or does so. */
    static boolean isMeant(TokenCursor cursor) {
        int mark = cursor.mark();
        boolean meant = cursor.opens("puts-right");
        while (!meant && !cursor.atEnd()) {
            meant = cursor.is("in-next-word") || cursor.takeTogether().isPresent();
            if (!cursor.atEnd()) {
                cursor.next();
            }
        }
        cursor.reset(mark);
        return meant;
    }

    /** What the round is for, if that is said, and the four sides in any order. */
    SidesReader.Read<List<ChangingStep>> read() {
        cursor.take("puts-right");
        cursor.skipPartings();
        return new SidesReader<>(cursor, work, this::takeAlong, "change").read();
    }

    private Optional<List<ChangingStep>> takeAlong() {
        List<ChangingStep> steps = new ArrayList<>();
        return takeSteps(steps, true) ? Optional.of(steps) : Optional.empty();
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
