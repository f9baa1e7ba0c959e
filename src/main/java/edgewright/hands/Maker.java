package edgewright.hands;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.hands.Stop.Reason;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * A maker who trusts nobody: begins with a base round of given counts and does only what the words say, one stitch after the
 * other, until it is done or hands cannot go on.
 *
 * <p>It counts what it has made and compares that with what is stated. It does not know the chart that the words were written
 * from. It comes to the sides in the order top, left, bottom, right, or with the hook in the left hand top, right, bottom,
 * left; for the work itself the order is all that matters.
 */
public final class Maker {
    /** One round given as stitches instead of words, each side in working order from its own corner. */
    public record Cells(String yarn, PerSide<List<Stitch>> sides, int cornerChains) {
        public Cells {
            sides = sides.map(List::copyOf);
        }
    }

    private final HouseRules rules;
    private final BooleanSupplier cancelled;
    /** What the pattern in work states, held against the piece in work. */
    private StatedSizes sizes = new StatedSizes(SideSize.unstated(), PerSide.all(0));

    /** A maker who follows these house rules and is never called away. */
    public Maker(HouseRules rules) {
        this(rules, () -> false);
    }

    /**
     * A maker who follows these house rules.
     *
     * @param cancelled asked before each side; once it answers true the work ends with a {@link
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
    public WorkOutcome work(Instructions pattern, PerSide<Integer> base) {
        int baseChains = pattern.base()
                .cornerChains()
                .orElse(pattern.rounds().isEmpty() ? 2 : pattern.rounds().get(0).cornerChains());
        TravelDirection travel = TravelDirection.of(pattern.hand());
        Fabric fabric = new Fabric(base, baseChains, travel);
        sizes = new StatedSizes(pattern.base().side(), base);
        Optional<Stop> stop = lookAt(pattern.base(), base);
        for (WrittenRound round : pattern.rounds()) {
            if (stop.isPresent()) {
                break;
            }
            stop = work(fabric, round, travel);
        }
        if (stop.isEmpty() && pattern.back().isPresent()) {
            stop = BackMaker.work(pattern.back().get(), fabric, sizes);
        }
        return outcome(fabric, stop);
    }

    /**
     * Works rounds of given stitches on a piece, with no words between. This is how a chart's own cells are judged.
     *
     * @param base the stitches on each side of the base round, corner chains not counted
     */
    public WorkOutcome work(List<Cells> rounds, PerSide<Integer> base, int baseChains) {
        TravelDirection travel = TravelDirection.ANTICLOCKWISE;
        Fabric fabric = new Fabric(base, baseChains, travel);
        Optional<Stop> stop = Optional.empty();
        for (Cells round : rounds) {
            if (stop.isPresent()) {
                break;
            }
            Fabric.MadeRound made = begin(round.yarn());
            for (Side side : travel.from(Side.FIRST)) {
                Hook hook = hook(fabric, made, side);
                stop = make(hook, round.sides().get(side));
                if (stop.isEmpty() && hook.left() > 0) {
                    stop = hook.stop(Reason.STITCHES_LEFT, 0, hook.left());
                }
                turnCorner(fabric, made, side, travel, hook.room(), round.cornerChains());
                if (stop.isPresent()) {
                    break;
                }
            }
            fabric.add(made);
        }
        return outcome(fabric, stop);
    }

    private Optional<Stop> work(Fabric fabric, WrittenRound round, TravelDirection travel) {
        Fabric.MadeRound made = begin(round.yarn());
        Optional<Stop> stop = round.start().isPresent()
                ? workFromStart(fabric, made, round, round.start().get(), travel)
                : workSides(fabric, made, round, travel, travel.from(Side.FIRST));
        fabric.add(made);
        return stop;
    }

    /** Whole sides, each from its corner to the next one and round that. */
    private Optional<Stop> workSides(
            Fabric fabric, Fabric.MadeRound made, WrittenRound round, TravelDirection travel, List<Side> sides) {
        Optional<Stop> stop = Optional.empty();
        for (Side side : sides) {
            Hook hook = hook(fabric, made, side);
            stop = round.changes().isPresent()
                    ? change(hook, round.changes().get().get(side))
                    : work(hook, round.stretch(side));
            int stitches = made.sides.get(side).size();
            if (stop.isEmpty()) {
                stop = compare(round.side(), round.number(), side, stitches);
            }
            turnCorner(fabric, made, side, travel, stitches, round.cornerChains());
            if (stop.isPresent()) {
                break;
            }
        }
        return stop;
    }

    /**
     * A round that begins along a side: from the marked place to the corner, three whole sides, and back along the first one to
     * the place of the join, where the last stitch is made.
     */
    private Optional<Stop> workFromStart(
            Fabric fabric, Fabric.MadeRound made, WrittenRound round, WrittenStart start, TravelDirection travel) {
        Side side = start.side();
        Hook whole = hook(fabric, made, side);
        MarkedWork words = new MarkedWork(round.stretch(), start.mark());
        Optional<Stop> stop = words.lookForMark(whole, start.stitch());
        if (stop.isPresent()) {
            return stop;
        }
        stop = work(whole.past(start.stitch(), made.sides.get(side)), words.toCorner());
        turnCorner(fabric, made, side, travel, whole.room(), round.cornerChains());
        if (stop.isEmpty()) {
            List<Side> others = travel.from(side).subList(1, Side.values().length);
            stop = workSides(fabric, made, round, travel, others);
        }
        if (stop.isPresent()) {
            return stop;
        }
        List<FabricStitch> toJoin = new ArrayList<>();
        Hook back = whole.upTo(start.stitch(), toJoin);
        stop = workBack(back, words.toMark(whole.room() - start.stitch()));
        made.sides.get(side).addAll(0, toJoin);
        return stop.isEmpty()
                ? compare(
                        round.side(), round.number(), side, made.sides.get(side).size())
                : stop;
    }

    /** What is worked at the end of such a round; the last stitch closes it. */
    private static Optional<Stop> workBack(Hook back, SideInstructions words) {
        Optional<Stop> stop = makeSteps(back, words.before());
        if (stop.isEmpty() && words.group().isPresent()) {
            stop = repeat(back, words.group().get());
        }
        if (stop.isEmpty()) {
            stop = makeSteps(back, words.after());
        }
        if (stop.isPresent()) {
            return stop;
        }
        return back.left() > 0 ? back.stop(Reason.SHORT_OF_THE_JOIN, 0, back.left()) : back.closed();
    }

    private static void turnCorner(
            Fabric fabric, Fabric.MadeRound made, Side side, TravelDirection travel, int stitches, int chains) {
        made.turnCorner(fabric.rounds() + 1, side, stitches, travel.after(side), chains);
    }

    /** What the words have up to the corner: what stands before the group, the group while it fits, what stands after it. */
    private static Optional<Stop> work(Hook hook, SideInstructions words) {
        Optional<Stop> stop = makeSteps(hook, words.before());
        if (stop.isEmpty() && words.group().isPresent()) {
            stop = repeat(hook, words.group().get());
        }
        if (stop.isEmpty()) {
            stop = makeSteps(hook, words.after());
        }
        return stop.isEmpty() && hook.left() > 0 ? hook.stop(Reason.STITCHES_LEFT, 0, hook.left()) : stop;
    }

    /** A side with words of its own, on which stitches are added or lost. */
    private static Optional<Stop> change(Hook hook, List<ChangingStep> words) {
        Optional<Stop> stop = Optional.empty();
        for (ChangingStep step : words) {
            if (step instanceof ChangingStep.Times times) {
                for (int i = 0; i < times.times() && stop.isEmpty(); i++) {
                    stop = steps(hook, times.steps());
                }
            } else {
                stop = steps(hook, List.of(step));
            }
            if (stop.isPresent()) {
                return stop;
            }
        }
        return hook.left() > 0 ? hook.stop(Reason.STITCHES_LEFT, 0, hook.left()) : stop;
    }

    private static Optional<Stop> steps(Hook hook, List<ChangingStep> steps) {
        Optional<Stop> stop = Optional.empty();
        for (ChangingStep step : steps) {
            if (step instanceof ChangingStep.Work work) {
                stop = makeSteps(hook, List.of(work.run()));
            } else if (step instanceof ChangingStep.TwoInOne two) {
                stop = hook.makeTwo(two.first(), two.second());
            } else if (step instanceof ChangingStep.Together both) {
                stop = hook.makeTogether(both.stitch());
            }
            if (stop.isPresent()) {
                break;
            }
        }
        return stop;
    }

    /** As often as the group fits before the last stitches: none, once or more. A maker counts what is left each time. */
    private static Optional<Stop> repeat(Hook hook, Group group) {
        int size = group.stitches();
        Optional<Stop> stop = Optional.empty();
        while (stop.isEmpty() && hook.left() != group.lastStitches()) {
            stop = hook.left() - size < group.lastStitches()
                    ? hook.stop(Reason.GROUP_DOES_NOT_FIT, group.lastStitches(), hook.left())
                    : makeSteps(hook, group.steps());
        }
        return stop;
    }

    /** What stands in brackets is worked again from its beginning, so many times. */
    private static Optional<Stop> makeSteps(Hook hook, List<? extends SideStep> steps) {
        Optional<Stop> stop = Optional.empty();
        for (SideStep step : steps) {
            int times = step instanceof Bracket bracket ? bracket.times() : ((Run) step).count();
            for (int i = 0; i < times && stop.isEmpty(); i++) {
                stop = step instanceof Bracket bracket
                        ? makeSteps(hook, bracket.steps())
                        : hook.make(((Run) step).stitch());
            }
            if (stop.isPresent()) {
                break;
            }
        }
        return stop;
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
    private Optional<Stop> lookAt(BaseRound stated, PerSide<Integer> base) {
        for (Side side : Side.values()) {
            int stitches = base.get(side);
            if (stated.fewest().isPresent() && stitches < stated.fewest().getAsInt()) {
                return Stop.atCount(
                        Reason.BASE_TOO_SHORT, 0, side, stated.fewest().getAsInt(), stitches);
            }
            Optional<Stop> stop = compare(stated.side(), 0, side, stitches);
            if (stop.isPresent()) {
                return stop;
            }
        }
        sizes.baseIsKnown();
        return Optional.empty();
    }

    private Optional<Stop> compare(SideSize stated, int round, Side side, int made) {
        return sizes.against(stated, round, side, made, Reason.COUNT_NOT_MET, Reason.MULTIPLE_NOT_MET);
    }

    private static Fabric.MadeRound begin(String yarn) {
        return new Fabric.MadeRound(yarn);
    }

    private Hook hook(Fabric fabric, Fabric.MadeRound made, Side side) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        return new Hook(rules, fabric.rounds() + 1, side, fabric.last().feet(side), made.sides.get(side));
    }

    private static WorkOutcome outcome(Fabric fabric, Optional<Stop> stop) {
        return stop.<WorkOutcome>map(s -> new WorkOutcome.Stopped(fabric, s))
                .orElseGet(() -> new WorkOutcome.Finished(fabric));
    }
}
