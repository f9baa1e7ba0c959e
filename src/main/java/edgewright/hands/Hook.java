package edgewright.hands;

import edgewright.chart.Stitch;
import edgewright.hands.Stop.Reason;
import java.util.List;
import java.util.Optional;

/**
 * The hook on one side of one round: makes the next stitch over the next thing below, or says why that cannot be done.
 *
 * <p>It knows loops and what lies over what. It does not know counts, columns or rules of a chart.
 */
final class Hook {
    private final HouseRules rules;
    private final int round;
    private final int side;
    private final List<Made> feet;
    private final List<Made> made;

    Hook(HouseRules rules, int round, int side, List<Made> feet, List<Made> made) {
        this.rules = rules;
        this.round = round;
        this.side = side;
        this.feet = feet;
        this.made = made;
    }

    /** How many more stitches the side takes before its corner. */
    int left() {
        return feet.size() - made.size();
    }

    /** How many stitches have been made. */
    int made() {
        return made.size();
    }

    /** Makes one stitch; answers with the stop if it cannot be made. */
    Optional<Stop> make(Stitch stitch) {
        if (left() == 0) {
            return stop(Reason.SIDE_FULL, stitch, feet.size());
        }
        Made foot = feet.get(made.size());
        return switch (stitch) {
            case BACK_LOOP -> workInto(foot, stitch, Loop.BACK);
            case PLAIN -> workInto(foot, stitch, Loop.BACK, Loop.FRONT);
            case CHAIN -> chainOver(foot);
            case LONG -> dropPast(foot);
        };
    }

    /** A stop at the stitch that would be made next. */
    Optional<Stop> stop(Reason reason, int expected, int found) {
        return Optional.of(new Stop(reason, round, side, made.size() + 1, Optional.empty(), expected, found));
    }

    private Optional<Stop> stop(Reason reason, Stitch wanted, int found) {
        return Optional.of(new Stop(reason, round, side, made.size() + 1, Optional.of(wanted), 0, found));
    }

    private Optional<Stop> workInto(Made foot, Stitch stitch, Loop... loops) {
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

    private Optional<Stop> chainOver(Made foot) {
        if (foot.kind() == Made.Kind.CORNER) {
            return stop(Reason.CHAIN_OVER_CORNER, Stitch.CHAIN, 0);
        }
        add(Stitch.CHAIN, foot, null);
        return Optional.empty();
    }

    /** A long stitch: in front of the foot, which is skipped, into the front loop of what the foot stands over. */
    private Optional<Stop> dropPast(Made foot) {
        if (foot.round() == 0) {
            return stop(Reason.NO_ROUND_BELOW, Stitch.LONG, 0);
        }
        if (foot.below().isEmpty()) {
            return stop(Reason.NOTHING_UNDER_CORNER, Stitch.LONG, 0);
        }
        Made landing = foot.below().get();
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
        if (landing.kind() == Made.Kind.CORNER) {
            if (!rules.landOnCornerChain()) {
                return stop(Reason.ON_CORNER, Stitch.LONG, 0);
            }
        } else {
            landing.take(Loop.FRONT);
        }
        foot.coverWith(add(Stitch.LONG, foot, landing));
        return Optional.empty();
    }

    private Made add(Stitch stitch, Made below, Made into) {
        Made next = Made.worked(stitch, round, side, made.size() + 1, below, into);
        made.add(next);
        return next;
    }
}
