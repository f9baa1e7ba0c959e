package edgewright.assist.picture;

import edgewright.assist.picture.ColumnSearch.Column;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The cheapest stitches of a picture without a loose run, by branch and bound. Each column alone is cheap to solve; a run that is
 * too long must be broken in one of its columns, so that many branches there are. No branch is looked into that costs as much as
 * the best so far: at least its columns as they are, and for every run still to be broken the cheapest break, where runs share no
 * column.
 */
final class NoLooseRuns {
    /** In cells looked at; a second or so. */
    private static final long MOST_WORK = 40_000_000;

    /** So deep the branches may lie; there may be many more runs than that, but no proof for them. */
    private static final int MOST_DEPTH = 1_000;

    private final Columns columns;
    private final BooleanSupplier cancelled;
    private long work;
    private boolean complete = true;
    private Column[] best;
    private Cost bestCost;

    /** One way to break a run: this kind of column is worked so. */
    private record Break(int kind, int row, Column column, Cost increase) {}

    /** The runs of one state: what breaking them costs at least, and the ways to break the dearest. */
    private record Outlook(Cost least, List<Break> ways) {}

    NoLooseRuns(Columns columns, BooleanSupplier cancelled) {
        this.columns = columns;
        this.cancelled = cancelled;
    }

    /**
     * Leaves the columns without a loose run.
     *
     * @return whether nothing cheaper is possible for certain; empty if locked stitches make every way loose
     */
    Optional<Boolean> run() {
        Column[] start = columns.snapshot();
        ColumnTask[] tasks = new ColumnTask[start.length];
        for (int kind = 0; kind < tasks.length; kind++) {
            tasks[kind] = columns.task(kind);
        }
        breakOneByOne();
        for (int kind = 0; kind < tasks.length; kind++) {
            columns.put(kind, tasks[kind], start[kind]);
        }
        search(columns.cost(), 0);
        if (best == null) {
            return Optional.empty();
        }
        columns.restore(best);
        return Optional.of(complete);
    }

    /** A first answer: every run is broken where it is cheapest, and no break is taken back. */
    private void breakOneByOne() {
        boolean loose = true;
        while (loose) {
            loose = false;
            for (int row = 1; row < columns.rounds(); row++) {
                for (int[] piece : columns.loose(row)) {
                    loose = true;
                    Optional<Break> way = ways(row, piece).stream().findFirst();
                    if (way.isEmpty()) {
                        return;
                    }
                    put(way.get());
                }
            }
        }
        best = columns.snapshot();
        bestCost = columns.cost();
        work = 0;
    }

    private void search(Cost cost, int depth) {
        if (work > MOST_WORK || depth > MOST_DEPTH || cancelled.getAsBoolean()) {
            complete = false;
            return;
        }
        Optional<Outlook> outlook = outlook();
        if (outlook.isEmpty()) {
            if (best == null || cost.isLessThan(bestCost)) {
                best = columns.snapshot();
                bestCost = cost;
            }
            return;
        }
        if (best != null && !cost.plus(outlook.get().least()).isLessThan(bestCost)) {
            return;
        }
        List<Integer> held = new ArrayList<>();
        List<ColumnTask> tasksBefore = new ArrayList<>();
        for (Break way : outlook.get().ways()) {
            ColumnTask task = columns.task(way.kind());
            Column column = columns.found(way.kind());
            put(way);
            search(cost.plus(way.increase()), depth + 1);
            // The branches after this one have this stitch long, or they would find the same again.
            columns.put(way.kind(), task.withLong(way.row()), column);
            held.add(way.kind());
            tasksBefore.add(task);
        }
        for (int i = 0; i < held.size(); i++) {
            columns.put(held.get(i), tasksBefore.get(i), columns.found(held.get(i)));
        }
    }

    private void put(Break way) {
        columns.put(way.kind(), columns.task(way.kind()).withoutLong(way.row()), way.column());
    }

    /** Empty if no run is loose. */
    private Optional<Outlook> outlook() {
        BitSet used = new BitSet();
        Cost least = Cost.NOTHING;
        List<Break> dearest = null;
        for (int row = 1; row < columns.rounds(); row++) {
            work += columns.width();
            for (int[] piece : columns.loose(row)) {
                if (dearest != null && isUsed(piece, used)) {
                    continue;
                }
                for (int column : piece) {
                    used.set(columns.kindOf(column));
                }
                List<Break> ways = ways(row, piece);
                if (ways.isEmpty()) {
                    return Optional.of(new Outlook(Cost.NOTHING, ways));
                }
                least = least.plus(ways.get(0).increase());
                if (dearest == null
                        || dearest.get(0).increase().isLessThan(ways.get(0).increase())) {
                    dearest = ways;
                }
            }
        }
        return dearest == null ? Optional.empty() : Optional.of(new Outlook(least, dearest));
    }

    private boolean isUsed(int[] piece, BitSet used) {
        for (int column : piece) {
            if (used.get(columns.kindOf(column))) {
                return true;
            }
        }
        return false;
    }

    /** The ways to break a piece of a run, cheapest first; none if all its stitches are locked. */
    private List<Break> ways(int row, int[] piece) {
        List<Break> ways = new ArrayList<>();
        for (int column : piece) {
            int kind = columns.kindOf(column);
            work += columns.rounds();
            columns.withoutLong(kind, row)
                    .ifPresent(other -> ways.add(new Break(kind, row, other, columns.increase(kind, other))));
        }
        ways.sort(Comparator.comparing(Break::increase));
        return ways;
    }
}
