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
 * and needs a front loop where it lands that is neither taken nor covered, on something firm; a chain is worked into nothing
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
        List<Underlay.Layer> layers = under.layers();
        int deep = stitch.roundsDown();
        if (layers.size() >= deep) {
            addOnStitches(stitch, layers.subList(0, deep - 1), broken);
            addLanding(layers.get(deep - 1), rules, broken);
            if (layers.subList(0, deep - 1).stream().allMatch(ColumnLaw::isOwnYarn)) {
                broken.add(AllRules.UNSEEN_LONG);
            }
        } else if (layers.get(layers.size() - 1) instanceof Underlay.OfBaseRound) {
            broken.add(AllRules.NO_ROUND_BELOW);
        } else {
            broken.add(AllRules.PAST_CORNER);
        }
    }

    /** @param between the stitches between a stitch and where it lands, the uppermost first */
    private static void addOnStitches(Stitch stitch, List<Underlay.Layer> between, List<Rule<?>> broken) {
        int deep = between.size() + 1;
        boolean covered = false;
        boolean used = false;
        for (int down = 1; down < deep; down++) {
            if (between.get(down - 1) instanceof Underlay.OfStitch on) {
                int left = deep - down;
                covered |= on.stitch().covers(left);
                used |= Stream.of(StitchLoop.values())
                        .anyMatch(loop -> stitch.takes(loop) && on.stitch().takes(loop, left));
            }
        }
        if (covered) {
            broken.add(AllRules.COVERED_LOOP);
        } else if (used) {
            broken.add(AllRules.USED_LOOP);
        }
    }

    private static boolean isOwnYarn(Underlay.Layer layer) {
        return layer instanceof Underlay.OfStitch on && on.ownYarn();
    }

    private static void addLanding(Underlay.Layer landing, Rules rules, List<Rule<?>> broken) {
        if (landing instanceof Underlay.OfStitch on) {
            if (on.stitch().coversStitchBelow() && !rules.stackLongStitches()) {
                broken.add(AllRules.LANDS_ON_LONG);
            } else if (on.stitch().roundsDown() == 0) {
                broken.add(AllRules.LANDS_ON_CHAIN);
            }
            addIfOther(on.ownYarn(), broken);
        } else if (landing instanceof Underlay.OfCornerChain corner) {
            addIfClosed(rules, broken);
            addIfOther(corner.ownYarn(), broken);
        } else if (landing instanceof Underlay.OfBaseRound base && base.atCorner()) {
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
        if (under.below() instanceof Underlay.OfStitch on) {
            if (on.stitch().roundsDown() == 0) {
                broken.add(AllRules.DEEP_GAP);
            }
        } else if (!(under.below() instanceof Underlay.OfBaseRound base) || base.atCorner()) {
            broken.add(AllRules.CHAIN_AT_CORNER);
        }
    }
}
