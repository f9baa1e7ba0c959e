package edgewright.assist.picture;

import edgewright.chart.Rules;
import edgewright.chart.Stitch;
import java.util.Arrays;
import java.util.Optional;

/**
 * The stitches of one fabric column that cost least, by a dynamic programme whose state is the last two stitches: a stitch
 * stands on those two alone, and whether a cell is covered is known as soon as the stitch above it is. It takes time linear in
 * the rounds and depends on nothing but the task, so equal columns get equal stitches.
 */
final class ColumnSearch {
    private static final int KINDS = Stitch.values().length;
    private static final long NONE = Long.MAX_VALUE;
    private static final int LONG = Stitch.LONG.ordinal();

    private final ColumnSteps steps;

    /**
     * The best stitches of a column.
     *
     * @param stitches the ordinals of the stitches, round 1 first
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on within the package, never compared
    record Column(long cost, byte[] stitches) {
        boolean isLong(int index) {
            return stitches[index] == LONG;
        }
    }

    ColumnSearch(Rules rules) {
        this.steps = new ColumnSteps(rules);
    }

    /** The cheapest column; empty if the stitches that are locked cannot be worked together. */
    Optional<Column> best(ColumnTask task) {
        int rounds = task.rounds();
        byte[][] lowerOf = new byte[rounds][KINDS * KINDS];
        long[] costs = new long[KINDS * KINDS];
        long[] next = new long[KINDS * KINDS];
        Arrays.fill(costs, NONE);
        for (int left = task.allowed(0) & steps.mayStand(1, 0, 0); left != 0; left &= left - 1) {
            int stitch = Integer.numberOfTrailingZeros(left);
            costs[stitch * KINDS] = costOf(stitch);
        }
        for (int i = 1; i < rounds; i++) {
            step(task, i, costs, next, lowerOf[i]);
            long[] spare = costs;
            costs = next;
            next = spare;
        }
        int best = cheapest(costs);
        if (costs[best] == NONE) {
            return Optional.empty();
        }
        long cost = costs[best] + task.uncovered(rounds - 1);
        return Optional.of(new Column(cost, walkedBack(lowerOf, best)));
    }

    /** The cost of the cheapest column, without its stitches; {@link Long#MAX_VALUE} if there is none. */
    long leastCost(ColumnTask task) {
        return best(task).map(Column::cost).orElse(NONE);
    }

    /** From the costs of all states below a round to those with it. A state is the stitch of a round and the one below it. */
    private void step(ColumnTask task, int i, long[] costs, long[] next, byte[] lowerOf) {
        Arrays.fill(next, NONE);
        for (int state = 0; state < costs.length; state++) {
            if (costs[state] == NONE) {
                continue;
            }
            int below = state / KINDS;
            int lower = state % KINDS;
            int may = task.allowed(i) & steps.mayStand(i + 1, below, lower);
            for (int left = may; left != 0; left &= left - 1) {
                int stitch = Integer.numberOfTrailingZeros(left);
                long shown = stitch == LONG ? task.covered(i - 1) : task.uncovered(i - 1);
                long cost = costs[state] + shown + costOf(stitch);
                int to = stitch * KINDS + below;
                if (cost < next[to]) {
                    next[to] = cost;
                    lowerOf[to] = (byte) lower;
                }
            }
        }
    }

    private static long costOf(int stitch) {
        return stitch == LONG ? ColumnTask.LONG : 0;
    }

    private static int cheapest(long[] costs) {
        int best = 0;
        for (int state = 1; state < costs.length; state++) {
            best = costs[state] < costs[best] ? state : best;
        }
        return best;
    }

    private static byte[] walkedBack(byte[][] lowerOf, int last) {
        byte[] stitches = new byte[lowerOf.length];
        int state = last;
        for (int i = stitches.length - 1; i >= 0; i--) {
            stitches[i] = (byte) (state / KINDS);
            state = state % KINDS * KINDS + lowerOf[i][state];
        }
        return stitches;
    }
}
