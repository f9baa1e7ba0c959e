package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Rules;
import edgewright.chart.Stitch;
import edgewright.chart.StitchLoop;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The law of one fabric column: may this stitch stand on what is under it? It is told from what stitches are, so it can be asked
 * before there is a chart; {@link Checker} does the same for sixty-four columns at once, and is held to it by test.
 *
 * <p>Law: a stitch takes loops of the stitch it is worked into, and no loop serves twice. A long stitch passes the stitch below
 * and needs a front loop two rounds below that is neither taken nor covered, on something firm; a chain is worked into nothing
 * and needs a neighbour below to hold. Reason: the hook goes only where a loop lies open, and yarn that hangs over a gap gives
 * way. Source: https://www.gyho.co.uk/mosaiccrochetrules and
 * https://hobbyistontheroad.com/category/projects-advice/page/2/ for the loops and the colour; the corners follow from the
 * geometry. The page of each rule in the {@link RuleBook} says more.
 *
 * <p>Not judged here, since more than one column decides: runs of long stitches, lengths of sections and sides, contrast.
 */
public final class ColumnLaw {
    private ColumnLaw() {}

    /**
     * The rules that a stitch breaks by standing there, in the order in which the findings of a stitch stand: errors first.
     * Empty if it may.
     */
    public static List<RuleEntry> broken(Stitch stitch, Underlay under, Rules rules) {
        List<Rule<?>> broken = new ArrayList<>();
        if (stitch.coversStitchBelow()) {
            addPastStitchBelow(stitch, under, rules, broken);
        } else if (!stitch.standsInStitchBelow()) {
            addOverGap(under, broken);
        }
        return broken.stream()
                .map(rule -> new RuleEntry(rule.id(), rule.severity()))
                .toList();
    }

    /**
     * The rules of one column that a stitch of a chart breaks.
     *
     * @throws IllegalArgumentException if the place is beyond its section; the chart must not be ragged
     */
    public static List<RuleEntry> broken(Chart chart, Place place) {
        return broken(chart.stitch(place), Underlay.of(chart, place), chart.rules());
    }

    private static void addPastStitchBelow(Stitch stitch, Underlay under, Rules rules, List<Rule<?>> broken) {
        if (under instanceof Underlay.BaseRound) {
            broken.add(AllRules.NO_ROUND_BELOW);
        } else if (under instanceof Underlay.OnStitch on) {
            addOnStitch(stitch, on, rules, broken);
        } else {
            broken.add(AllRules.PAST_CORNER);
        }
    }

    private static void addOnStitch(Stitch stitch, Underlay.OnStitch on, Rules rules, List<Rule<?>> broken) {
        boolean isOpen = Stream.of(StitchLoop.values()).filter(stitch::takes).allMatch(on.below()::leavesFree);
        if (!isOpen) {
            broken.add(on.below().coversStitchBelow() ? AllRules.COVERED_LOOP : AllRules.USED_LOOP);
        }
        addLanding(on.lower(), rules, broken);
        if (on.ownYarnBelow()) {
            broken.add(AllRules.UNSEEN_LONG);
        }
    }

    private static void addLanding(Underlay.Lower lower, Rules rules, List<Rule<?>> broken) {
        if (lower instanceof Underlay.LowerStitch landing) {
            if (landing.stitch().coversStitchBelow() && !rules.stackLongStitches()) {
                broken.add(AllRules.LANDS_ON_LONG);
            } else if (landing.stitch().roundsDown() == 0) {
                broken.add(AllRules.LANDS_ON_CHAIN);
            }
            addIfOther(landing.ownYarn(), broken);
        } else if (lower instanceof Underlay.LowerCornerChain corner) {
            addIfClosed(rules, broken);
            addIfOther(corner.ownYarn(), broken);
        } else if (lower instanceof Underlay.LowerBaseRound base && base.inCornerChain()) {
            addIfClosed(rules, broken);
        }
    }

    private static void addIfClosed(Rules rules, List<Rule<?>> broken) {
        if (!rules.landOnCornerChain()) {
            broken.add(AllRules.LANDS_ON_CORNER_CHAIN);
        }
    }

    private static void addIfOther(boolean ownYarn, List<Rule<?>> broken) {
        if (!ownYarn) {
            broken.add(AllRules.OTHER_YARN);
        }
    }

    private static void addOverGap(Underlay under, List<Rule<?>> broken) {
        if (under instanceof Underlay.OnStitch on) {
            if (on.below().roundsDown() == 0) {
                broken.add(AllRules.DEEP_GAP);
            }
        } else if (!(under instanceof Underlay.BaseRound base) || base.atCorner()) {
            broken.add(AllRules.CHAIN_AT_CORNER);
        }
    }
}
