package edgewright.hands;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.hands.Stop.Reason;
import java.util.List;
import java.util.Optional;

/**
 * The hook on one side of one round, or on a stretch of it: makes the next stitch over the next thing below, or says why
 * that cannot be done.
 *
 * <p>It knows loops and what lies over what. It does not know counts, columns or rules of a chart.
 */
final class Hook {
    private static final List<Loop> BACK_ALONE = List.of(Loop.BACK);
    private static final List<Loop> BOTH = List.of(Loop.BACK, Loop.FRONT);
    private static final List<Loop> NONE = List.of();

    private final HouseRules rules;
    private final int round;
    private final Side side;
    private final List<FabricStitch> feet;
    private final int first;
    private final int end;
    private final List<FabricStitch> made;
    /** How many things below have been worked over. */
    private int used;

    private Hook(
            HouseRules rules,
            int round,
            Side side,
            List<FabricStitch> feet,
            int first,
            int end,
            List<FabricStitch> made) {
        this.rules = rules;
        this.round = round;
        this.side = side;
        this.feet = feet;
        this.first = first;
        this.end = end;
        this.made = made;
    }

    /**
     * At the beginning of a side.
     *
     * @param feet everything that the side is worked over, in order: corner, stitches, corner
     * @param made takes up what is made
     */
    Hook(HouseRules rules, int round, Side side, List<FabricStitch> feet, List<FabricStitch> made) {
        this(rules, round, side, feet, 0, feet.size(), made);
    }

    /** On the same side past its first so many things below, to go on to the corner. */
    Hook past(int number, List<FabricStitch> madeThere) {
        return new Hook(rules, round, side, feet, number, feet.size(), madeThere);
    }

    /** At the beginning of the same side, to go no further than over its first so many things below. */
    Hook upTo(int number, List<FabricStitch> madeThere) {
        return new Hook(rules, round, side, feet, 0, number, madeThere);
    }

    /** How many more stitches there is room for, up to the corner or to where this stretch ends. */
    int left() {
        return end - first - used;
    }

    /** How many stitches the whole side takes, unless some are added or lost. */
    int room() {
        return feet.size();
    }

    /** Makes one stitch; answers with the stop if it cannot be made. */
    Optional<Stop> make(Stitch stitch) {
        if (left() == 0) {
            return end < feet.size()
                    ? stop(Reason.PAST_THE_JOIN, stitch, end)
                    : stop(Reason.SIDE_FULL, stitch, feet.size());
        }
        FabricStitch foot = feet.get(first + used);
        Optional<Stop> stop = make(stitch, foot);
        used += stop.isEmpty() ? 1 : 0;
        return stop;
    }

    private Optional<Stop> make(Stitch stitch, FabricStitch foot) {
        return switch (stitch) {
            case BACK_LOOP, PLAIN -> workInto(foot, stitch, loops(stitch));
            case CHAIN -> chainOver(foot);
            case LONG -> dropPast(foot);
        };
    }

    /** Makes two stitches in the next one. They share its loops. */
    Optional<Stop> makeTwo(Stitch one, Stitch other) {
        Optional<Stop> stop =
                loops(one).isEmpty() || loops(other).isEmpty() ? stop(Reason.CHANGE_NOT_PLAIN, one, 0) : make(one);
        if (stop.isEmpty()) {
            FabricStitch first = made.get(made.size() - 1);
            FabricStitch foot = first.below().orElseThrow();
            loops(other).forEach(foot::take);
            first.makeUneven();
            add(other, foot, foot).makeUneven();
        }
        return stop;
    }

    /** Makes one stitch over the next two. */
    Optional<Stop> makeTogether(Stitch stitch) {
        if (loops(stitch).isEmpty()) {
            return stop(Reason.CHANGE_NOT_PLAIN, stitch, 0);
        }
        if (left() < 2) {
            return stop(Reason.SIDE_FULL, stitch, feet.size());
        }
        Optional<Stop> stop = make(stitch);
        if (stop.isEmpty()) {
            FabricStitch second = feet.get(first + used);
            if (!loops(stitch).stream().allMatch(second::isFree)) {
                return stop(Reason.LOOP_TAKEN, stitch, 0);
            }
            loops(stitch).forEach(second::take);
            made.get(made.size() - 1).makeUneven();
            used++;
        }
        return stop;
    }

    /** Whether the round can be closed with the stitch that was made last: only if it is worked into the stitch below. */
    Optional<Stop> closed() {
        Stitch last = made.get(made.size() - 1).stitch().orElseThrow();
        return loops(last).isEmpty()
                ? Optional.of(new Stop(Reason.NOT_TO_BE_CLOSED, round, side, end, Optional.of(last), 0, 0))
                : Optional.empty();
    }

    /** The loops that a stitch takes of the one below; none if it is not worked into that one. */
    private static List<Loop> loops(Stitch stitch) {
        return switch (stitch) {
            case BACK_LOOP -> BACK_ALONE;
            case PLAIN -> BOTH;
            case CHAIN, LONG -> NONE;
        };
    }

    /** A stop at the stitch that would be made next. */
    Optional<Stop> stop(Reason reason, int expected, int found) {
        return Optional.of(new Stop(reason, round, side, next(), Optional.empty(), expected, found));
    }

    /** A stop at this stitch of the side, which is what the words ask for. */
    Optional<Stop> stopAt(Reason reason, int stitch, int found) {
        return Optional.of(new Stop(reason, round, side, stitch, Optional.empty(), stitch, found));
    }

    private Optional<Stop> stop(Reason reason, Stitch wanted, int found) {
        return Optional.of(new Stop(reason, round, side, next(), Optional.of(wanted), 0, found));
    }

    /** Which stitch of the side would be made next, from 1. */
    private int next() {
        return first + made.size() + 1;
    }

    private Optional<Stop> workInto(FabricStitch foot, Stitch stitch, List<Loop> loops) {
        for (Loop loop : loops) {
            if (!foot.isFree(loop)) {
                return stop(Reason.LOOP_TAKEN, stitch, 0);
            }
        }
        for (Loop loop : loops) {
            foot.take(loop);
        }
        add(stitch, foot, foot);
        return Optional.empty();
    }

    private Optional<Stop> chainOver(FabricStitch foot) {
        if (foot.kind() == FabricStitch.Kind.CORNER) {
            return stop(Reason.CHAIN_OVER_CORNER, Stitch.CHAIN, 0);
        }
        add(Stitch.CHAIN, foot, null);
        return Optional.empty();
    }

    /** A long stitch: in front of the foot, which is skipped, into the front loop of what the foot stands over. */
    private Optional<Stop> dropPast(FabricStitch foot) {
        if (foot.round() == 0) {
            return stop(Reason.NO_ROUND_BELOW, Stitch.LONG, 0);
        }
        if (foot.below().isEmpty()) {
            return stop(Reason.NOTHING_UNDER_CORNER, Stitch.LONG, 0);
        }
        if (foot.isUneven()) {
            return stop(Reason.ACROSS_A_CHANGE, Stitch.LONG, 0);
        }
        FabricStitch landing = foot.below().get();
        if (landing.inFront().isPresent()) {
            return stop(Reason.COVERED, Stitch.LONG, 0);
        }
        if (!landing.isFree(Loop.FRONT)) {
            return stop(Reason.LOOP_TAKEN, Stitch.LONG, 0);
        }
        if (landing.is(Stitch.CHAIN)) {
            return stop(Reason.ON_CHAIN, Stitch.LONG, 0);
        }
        if (landing.is(Stitch.LONG) && !rules.stackLongStitches()) {
            return stop(Reason.ON_LONG, Stitch.LONG, 0);
        }
        if (landing.kind() == FabricStitch.Kind.CORNER) {
            if (!rules.landOnCornerChain()) {
                return stop(Reason.ON_CORNER, Stitch.LONG, 0);
            }
        }
        landing.take(Loop.FRONT);
        foot.coverWith(add(Stitch.LONG, foot, landing));
        return Optional.empty();
    }

    private FabricStitch add(Stitch stitch, FabricStitch below, FabricStitch into) {
        FabricStitch worked = FabricStitch.worked(stitch, round, side, next(), below, into);
        made.add(worked);
        return worked;
    }
}
