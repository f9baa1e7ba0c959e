package edgewright.words.write;

import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import java.util.ArrayList;
import java.util.List;

/**
 * A side of any size as steps before a group, the group, and steps after it, in the fewest things that a reader must take in.
 * What is counted, what may be said and how ties are decided stands in the decision 0012.
 *
 * <p>The group has the shortest period of the repeat. It may begin earlier than the repeat and end later, where the corner
 * sections continue the same period, or later and earlier by less than a period; together by whole periods, so that it comes
 * out even on every side. No run of one stitch is cut by it.
 */
final class GroupedSide {
    private final String from;
    private final String period;
    private final String to;
    private final Bracketing before;
    private final List<Run> runsBefore;
    private final Bracketing after;
    private final List<Run> runsAfter;
    private final TurningGroup group;

    private GroupedSide(String from, String period, String to) {
        this.from = from;
        this.period = period;
        this.to = to;
        // Two periods, so that a run that begins in the first is seen whole.
        runsBefore = runs(from + period + period);
        before = new Bracketing(runsBefore);
        runsAfter = runs(period + period + to);
        after = new Bracketing(runsAfter);
        group = new TurningGroup(period);
    }

    /**
     * The simplest way to say a round.
     *
     * @param sizes how often the repeat is worked on each side of each size; empty for words that hold for any side that has
     *     the repeat at least {@link #fewestRepeats} times
     */
    static SideInstructions of(Round round, List<PerSide<Integer>> sizes) {
        boolean someHaveNone = sizes.stream().flatMap(PerSide::stream).anyMatch(times -> times == 0);
        return of(round.fromCorner(), round.repeat(), round.toCorner(), someHaveNone);
    }

    /**
     * The simplest way to say these three sections. A repeat without stitches, which only a ragged chart has, is not said.
     *
     * @param evenWithNone whether the words must hold on a side without a repeat
     */
    static SideInstructions of(Stitches fromCorner, Stitches repeat, Stitches toCorner, boolean evenWithNone) {
        String from = fromCorner.letters();
        String to = toCorner.letters();
        if (repeat.length() == 0) {
            List<Run> runs = runs(from + to);
            return SideInstructions.of(new Bracketing(runs).steps(0, runs.size()));
        }
        String period = repeat.letters().substring(0, repeat.shortestPeriod());
        if (period.length() > 1) {
            return new GroupedSide(from, period, to).simplest(evenWithNone);
        }
        return whole(
                from.substring(0, from.length() - continuesBackwards(from, period)),
                period,
                to.substring(continuesForwards(to, period)));
    }

    /** These three parts, each by itself. */
    private static SideInstructions whole(String before, String group, String after) {
        List<Run> first = runs(before);
        List<Run> repeated = runs(group);
        List<Run> last = runs(after);
        return SideInstructions.of(
                new Bracketing(first).steps(0, first.size()),
                new Group(new Bracketing(repeated).steps(0, repeated.size()), after.length()),
                new Bracketing(last).steps(0, last.size()));
    }

    /** How often the repeat must be worked on a side for these words to hold: 0 or 1. */
    static int fewestRepeats(Round round, SideInstructions said) {
        int apart = SideStep.stitches(said.before()) + SideStep.stitches(said.after());
        boolean grouped = said.group().isPresent();
        return grouped && apart > round.fromCorner().length() + round.toCorner().length() ? 1 : 0;
    }

    /**
     * A way to say the side.
     *
     * @param first how many runs stand before the group
     * @param last how many after it
     * @param turn the place of the period at which the group begins, counted from 0
     */
    private record Way(int cost, int fewest, int first, int last, int turn) {
        boolean isBetterThan(Way other) {
            return other == null
                    || cost < other.cost
                    || (cost == other.cost && fewest < other.fewest)
                    || (cost == other.cost && fewest == other.fewest && first < other.first)
                    || (cost == other.cost && fewest == other.fewest && first == other.first && last < other.last);
        }
    }

    private SideInstructions simplest(boolean evenWithNone) {
        List<List<End>> ends = ends();
        int[] costs = before.costs(0, runsBefore.size());
        Way best = null;
        int stitches = 0;
        for (int first = 0; stitches < from.length() + period.length(); first++) {
            int turn = Math.floorMod(stitches - from.length(), period.length());
            if (stitches >= from.length() - continuesBackwards(from, period) && group.canBeginAt(turn)) {
                int rest = Math.floorMod(from.length() + to.length() - stitches, period.length());
                for (End end : ends.get(rest)) {
                    int fewest = stitches + end.stitches() > from.length() + to.length() ? 1 : 0;
                    int cost = costs[first] + group.cost(turn) + end.cost();
                    Way way = new Way(cost, fewest, first, end.runs(), turn);
                    best = (fewest == 0 || !evenWithNone) && way.isBetterThan(best) ? way : best;
                }
            }
            stitches += runsBefore.get(first).count();
        }
        return best == null ? whole(from, period, to) : said(best);
    }

    /**
     * What may follow the group.
     *
     * @param cost of its runs and of 'to the last ... sts'
     */
    private record End(int runs, int stitches, int cost) {}

    /** Where the group may end, by the rest of the stitches after it when they are divided by the period. */
    private List<List<End>> ends() {
        List<List<End>> ends = new ArrayList<>();
        for (int rest = 0; rest < period.length(); rest++) {
            ends.add(new ArrayList<>());
        }
        int[] costs = after.costsToEnd();
        int stitches = 0;
        for (int last = 0; stitches < to.length() + period.length(); last++) {
            if (stitches >= to.length() - continuesForwards(to, period)) {
                int cost = costs[runsAfter.size() - last] + (stitches == 0 ? 0 : 1);
                ends.get(stitches % period.length()).add(new End(last, stitches, cost));
            }
            stitches += runsAfter.get(runsAfter.size() - 1 - last).count();
        }
        return ends;
    }

    private SideInstructions said(Way way) {
        int start = runsAfter.size() - way.last();
        int last = runsAfter.subList(start, runsAfter.size()).stream()
                .mapToInt(Run::count)
                .sum();
        return SideInstructions.of(
                before.steps(0, way.first()),
                new Group(group.steps(way.turn()), last),
                after.steps(start, runsAfter.size()));
    }

    private static int continuesBackwards(String from, String period) {
        int n = 0;
        while (n < from.length()
                && from.charAt(from.length() - 1 - n) == period.charAt(period.length() - 1 - n % period.length())) {
            n++;
        }
        return n;
    }

    private static int continuesForwards(String to, String period) {
        int n = 0;
        while (n < to.length() && to.charAt(n) == period.charAt(n % period.length())) {
            n++;
        }
        return n;
    }

    static List<Run> runs(String letters) {
        List<Run> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= letters.length(); i++) {
            if (i == letters.length() || letters.charAt(i) != letters.charAt(start)) {
                runs.add(new Run(
                        i - start, Stitch.ofLetter(letters.charAt(start)).orElseThrow()));
                start = i;
            }
        }
        return runs;
    }
}
