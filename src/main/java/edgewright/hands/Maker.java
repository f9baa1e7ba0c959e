package edgewright.hands;

import edgewright.chart.Stitch;
import edgewright.hands.Stop.Reason;
import edgewright.words.BaseRound;
import edgewright.words.Group;
import edgewright.words.Multiple;
import edgewright.words.Pattern;
import edgewright.words.Run;
import edgewright.words.SideCounts;
import edgewright.words.SideSize;
import edgewright.words.WrittenRound;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * A maker who trusts nobody: begins with a base round of given counts and does only what the words say, one stitch after the
 * other, until it is done or hands cannot go on.
 *
 * <p>It counts what it has made and compares that with what is stated. It does not know the chart that the words were written
 * from. Right-handed makers come to the sides in the order top, left, bottom, right; for the work itself the order is all
 * that matters.
 */
public final class Maker {
    /** One round given as stitches instead of words: the four sides in working order, each from its own corner. */
    public record Cells(String yarn, List<List<Stitch>> sides, int cornerChains) {
        public Cells {
            sides = sides.stream().map(List::copyOf).toList();
            if (sides.size() != Fabric.SIDES) {
                throw new IllegalArgumentException("a round has four sides, not " + sides.size());
            }
        }
    }

    private final HouseRules rules;
    private final BooleanSupplier cancelled;

    /** A maker who follows these house rules and is never called away. */
    public Maker(HouseRules rules) {
        this(rules, () -> false);
    }

    /**
     * A maker who follows these house rules.
     *
     * @param cancelled asked before each round; once it answers true the work ends with a {@link
     *     java.util.concurrent.CancellationException}
     */
    public Maker(HouseRules rules, BooleanSupplier cancelled) {
        this.rules = rules;
        this.cancelled = cancelled;
    }

    /**
     * Works a pattern on a piece.
     *
     * @param base the stitches on each side of the base round, corner chains not counted
     */
    public Outcome work(Pattern pattern, SideCounts base) {
        int baseChains = pattern.base()
                .cornerChains()
                .orElse(pattern.rounds().isEmpty() ? 2 : pattern.rounds().get(0).cornerChains());
        Fabric fabric = new Fabric(base.inWorkingOrder(), baseChains);
        Optional<Stop> stop = lookAt(pattern.base(), base);
        for (WrittenRound round : pattern.rounds()) {
            if (stop.isPresent()) {
                break;
            }
            stop = work(fabric, round);
        }
        return outcome(fabric, stop);
    }

    /**
     * Works rounds of given stitches on a piece, with no words between. This is how a chart's own cells are judged.
     *
     * @param base the stitches on each side of the base round, corner chains not counted
     */
    public Outcome work(List<Cells> rounds, SideCounts base, int baseChains) {
        Fabric fabric = new Fabric(base.inWorkingOrder(), baseChains);
        Optional<Stop> stop = Optional.empty();
        for (Cells round : rounds) {
            if (stop.isPresent()) {
                break;
            }
            Fabric.MadeRound made = begin(round.yarn());
            for (int side = 0; side < Fabric.SIDES && stop.isEmpty(); side++) {
                Hook hook = hook(fabric, made, side);
                stop = make(hook, round.sides().get(side));
                if (stop.isEmpty() && hook.left() > 0) {
                    stop = hook.stop(Reason.STITCHES_LEFT, 0, hook.left());
                }
                made.turnCorner(fabric.rounds() + 1, side, round.cornerChains());
            }
            fabric.add(made);
        }
        return outcome(fabric, stop);
    }

    private Optional<Stop> work(Fabric fabric, WrittenRound round) {
        Fabric.MadeRound made = begin(round.yarn());
        Optional<Stop> stop = Optional.empty();
        for (int side = 0; side < Fabric.SIDES && stop.isEmpty(); side++) {
            Hook hook = hook(fabric, made, side);
            stop = work(hook, round);
            if (stop.isEmpty()) {
                stop = compare(round.side(), round.number(), side, hook.made());
            }
            made.turnCorner(fabric.rounds() + 1, side, round.cornerChains());
        }
        fabric.add(made);
        return stop;
    }

    /** One side as the words have it: what stands before the group, the group while it fits, what stands after it. */
    private static Optional<Stop> work(Hook hook, WrittenRound round) {
        Optional<Stop> stop = makeRuns(hook, round.before());
        if (stop.isEmpty() && round.group().isPresent()) {
            stop = repeat(hook, round.group().get());
        }
        if (stop.isEmpty()) {
            stop = makeRuns(hook, round.after());
        }
        return stop.isEmpty() && hook.left() > 0 ? hook.stop(Reason.STITCHES_LEFT, 0, hook.left()) : stop;
    }

    /** As often as the group fits before the last stitches: none, once or more. A maker counts what is left each time. */
    private static Optional<Stop> repeat(Hook hook, Group group) {
        int size = Run.stitches(group.runs());
        Optional<Stop> stop = Optional.empty();
        while (stop.isEmpty() && hook.left() != group.lastStitches()) {
            stop = hook.left() - size < group.lastStitches()
                    ? hook.stop(Reason.GROUP_DOES_NOT_FIT, group.lastStitches(), hook.left())
                    : makeRuns(hook, group.runs());
        }
        return stop;
    }

    private static Optional<Stop> makeRuns(Hook hook, List<Run> runs) {
        for (Run run : runs) {
            for (int i = 0; i < run.count(); i++) {
                Optional<Stop> stop = hook.make(run.stitch());
                if (stop.isPresent()) {
                    return stop;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Stop> make(Hook hook, List<Stitch> stitches) {
        for (Stitch stitch : stitches) {
            Optional<Stop> stop = hook.make(stitch);
            if (stop.isPresent()) {
                return stop;
            }
        }
        return Optional.empty();
    }

    /** Compares the piece with what the pattern says of the base round. */
    private static Optional<Stop> lookAt(BaseRound stated, SideCounts base) {
        for (int side = 0; side < Fabric.SIDES; side++) {
            int stitches = base.inWorkingOrder().get(side);
            if (stated.fewest().isPresent() && stitches < stated.fewest().getAsInt()) {
                return count(Reason.BASE_TOO_SHORT, 0, side, stated.fewest().getAsInt(), stitches);
            }
            Optional<Stop> stop = compare(stated.side(), 0, side, stitches);
            if (stop.isPresent()) {
                return stop;
            }
        }
        return Optional.empty();
    }

    private static Optional<Stop> compare(SideSize stated, int round, int side, int made) {
        if (stated.counts().isPresent()) {
            int expected = stated.counts().get().inWorkingOrder().get(side);
            if (expected != made) {
                return count(Reason.COUNT_NOT_MET, round, side, expected, made);
            }
        }
        if (stated.multiple().isPresent() && !stated.multiple().get().has(made)) {
            Multiple multiple = stated.multiple().get();
            return count(
                    Reason.MULTIPLE_NOT_MET, round, side, Math.floorMod(made - multiple.plus(), multiple.of()), made);
        }
        return Optional.empty();
    }

    private static Optional<Stop> count(Reason reason, int round, int side, int expected, int found) {
        return Optional.of(new Stop(reason, round, side, found, Optional.empty(), expected, found));
    }

    private Fabric.MadeRound begin(String yarn) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        return new Fabric.MadeRound(yarn);
    }

    private Hook hook(Fabric fabric, Fabric.MadeRound made, int side) {
        return new Hook(rules, fabric.rounds() + 1, side, fabric.last().feet(side), made.sides.get(side));
    }

    private static Outcome outcome(Fabric fabric, Optional<Stop> stop) {
        return stop.<Outcome>map(s -> new Outcome.Stopped(fabric, s)).orElseGet(() -> new Outcome.Finished(fabric));
    }
}
