package edgewright.yarn;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Looks for other yarns for the rounds of a chart, by branch and bound over the groups of rounds that go together: the groups
 * that take most yarn first, each in its own yarn first. A branch is left when the rest of the groups cannot be worked from what
 * remains, or cannot lead to anything better than what was found.
 */
final class YarnSearch {
    /** How many groups are looked at, each time anew, before the search is given up: a few seconds. */
    private static final long MOST_STEPS = 150_000_000;

    /** Some milliseconds. */
    private static final long STEPS_BETWEEN_ASKING = 100_000;

    private final RoundGroups groups;
    private final List<Yarn> yarns;
    private final boolean[][] mayMeet;
    /** Groups in the order in which they are given a yarn. */
    private final List<Integer> order;

    private final double[] metres;
    /** The metres of a group and of all that come after it in the order. */
    private final double[] rest;

    private final int[] own;
    /** The yarns that a group is tried in: its own first, then the others in the order of the chart. */
    private final int[][] turns;

    private final int[] chosen;
    private final double[] remaining;
    private final boolean limited;
    private final long mostSteps;
    private final BooleanSupplier cancelled;

    private long steps;
    private long nextAsk;
    private int[] best;
    private int fewestChanged = Integer.MAX_VALUE;
    private double mostLeft;

    private YarnSearch(Chart chart, Amounts amounts, long mostSteps, BooleanSupplier cancelled) {
        this.mostSteps = mostSteps;
        this.cancelled = cancelled;
        groups = RoundGroups.of(chart);
        yarns = chart.yarns();
        mayMeet = new boolean[yarns.size()][yarns.size()];
        for (int one = 0; one < yarns.size(); one++) {
            for (int two = 0; two < yarns.size(); two++) {
                mayMeet[one][two] = one != two
                        && groups.mayMeet(yarns.get(one).id(), yarns.get(two).id());
            }
        }
        metres = metresOfGroups(chart, amounts);
        order = IntStream.range(0, groups.size())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer group) -> -metres[group]))
                .toList();
        rest = new double[order.size() + 1];
        for (int at = order.size() - 1; at >= 0; at--) {
            rest[at] = rest[at + 1] + metres[order.get(at)];
        }
        own = IntStream.range(0, groups.size())
                .map(group -> yarns.indexOf(chart.yarn(groups.yarn(group)).orElseThrow()))
                .toArray();
        turns = Arrays.stream(own)
                .mapToObj(first -> IntStream.concat(
                                IntStream.of(first),
                                IntStream.range(0, yarns.size()).filter(yarn -> yarn != first))
                        .toArray())
                .toArray(int[][]::new);
        chosen = new int[groups.size()];
        Arrays.fill(chosen, -1);
        remaining = yarns.stream()
                .mapToDouble(yarn -> yarn.metresInHand().orElse(Double.POSITIVE_INFINITY))
                .toArray();
        limited = yarns.stream().allMatch(yarn -> yarn.metresInHand().isPresent());
    }

    /** The answer for a chart whose own yarns are not enough. */
    static WhatIsLeft of(Chart chart, Amounts amounts, BooleanSupplier cancelled) {
        return of(chart, amounts, MOST_STEPS, cancelled);
    }

    /** The same, giving up after so many steps. */
    static WhatIsLeft of(Chart chart, Amounts amounts, long mostSteps) {
        return of(chart, amounts, mostSteps, () -> false);
    }

    private static WhatIsLeft of(Chart chart, Amounts amounts, long mostSteps, BooleanSupplier cancelled) {
        YarnSearch search = new YarnSearch(chart, amounts, mostSteps, cancelled);
        search.branch(0, 0);
        boolean through = search.steps < mostSteps;
        if (search.best == null) {
            return through ? new WhatIsLeft.NotEnough(amounts) : new WhatIsLeft.Undecided(amounts);
        }
        List<String> ids = new ArrayList<>();
        for (int round = 1; round <= chart.rounds().size(); round++) {
            ids.add(search.yarns.get(search.best[search.groups.ofRound(round)]).id());
        }
        return new WhatIsLeft.OtherYarns(amounts, ids, through);
    }

    /** With the margin. The back layer and the joining round go with the outermost round. */
    private double[] metresOfGroups(Chart chart, Amounts amounts) {
        double[] sums = new double[groups.size()];
        for (Amounts.OfRound round : amounts.rounds()) {
            int charted = round.round().layer() == WorkedRound.Layer.FRONT
                    ? round.round().number()
                    : chart.rounds().size();
            sums[groups.ofRound(charted)] += round.metres() * (1 + Amounts.MARGIN);
        }
        return sums;
    }

    private void branch(int at, int changed) {
        if (steps >= nextAsk) {
            nextAsk = steps + STEPS_BETWEEN_ASKING;
            if (cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
        }
        if (at == order.size()) {
            keep(changed);
            return;
        }
        if (steps >= mostSteps || isHopeless(at, changed)) {
            return;
        }
        int group = order.get(at);
        for (int yarn : turns[group]) {
            steps++;
            double before = remaining[yarn];
            if (metres[group] <= before + Amounts.NOTHING && fits(group, yarn)) {
                chosen[group] = yarn;
                remaining[yarn] = before - metres[group];
                branch(
                        at + 1,
                        changed + (yarn == own[group] ? 0 : groups.rounds(group).size()));
                remaining[yarn] = before;
                chosen[group] = -1;
            }
        }
    }

    private boolean fits(int group, int yarn) {
        for (int other : groups.beside(group)) {
            if (chosen[other] >= 0 && !mayMeet[yarn][chosen[other]]) {
                return false;
            }
        }
        return true;
    }

    private boolean isHopeless(int at, int changed) {
        if (limited && rest[at] > allLeft() + yarns.size() * Amounts.NOTHING) {
            return true;
        }
        if (best == null) {
            return false;
        }
        int least = changed + leastToCome(at);
        return least > fewestChanged || (least == fewestChanged && leastLeft() <= mostLeft);
    }

    /** At least so many rounds must still change: enough to relieve each yarn of what it cannot give to its own groups. */
    private int leastToCome(int at) {
        double[] wanted = new double[yarns.size()];
        double[] most = new double[yarns.size()];
        steps += order.size() - at;
        for (int i = at; i < order.size(); i++) {
            int group = order.get(i);
            wanted[own[group]] += metres[group];
            most[own[group]] = Math.max(
                    most[own[group]], metres[group] / groups.rounds(group).size());
        }
        int least = 0;
        for (int yarn = 0; yarn < wanted.length; yarn++) {
            double tooMuch = wanted[yarn] - remaining[yarn];
            if (tooMuch > Amounts.NOTHING) {
                least += (int) Math.ceil(tooMuch / most[yarn] - 1e-9);
            }
        }
        return least;
    }

    private double allLeft() {
        double all = 0;
        for (double metresLeft : remaining) {
            all += metresLeft;
        }
        return all;
    }

    private double leastLeft() {
        double least = Double.POSITIVE_INFINITY;
        for (double metresLeft : remaining) {
            least = Math.min(least, metresLeft);
        }
        return least;
    }

    private void keep(int changed) {
        double left = leastLeft();
        if (changed < fewestChanged || (changed == fewestChanged && left > mostLeft)) {
            best = chosen.clone();
            fewestChanged = changed;
            mostLeft = left;
        }
    }
}
