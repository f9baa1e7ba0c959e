package edgewright.desk.work;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * An edit while it is still being made, from the press of a button to its release. However often it is looked at, it is one
 * edit, and each look is worked out from the chart before it: a line can become shorter again.
 *
 * <p>The bench shows the chart of the last preview, with its findings. Any other edit, an undo or a redo commits it first; it
 * goes with its chart when another one is opened. After its end nothing of it does anything.
 *
 * <p>One that is only looked at is no work of anybody's: any other edit takes it back first, and it is never unsaved.
 */
public final class Transaction {
    private final Workbench bench;
    private final EditName name;
    private final Chart before;
    private final Place from;
    private final boolean isLookedAt;
    private Place shownAt;
    private boolean ended;

    /** How an edit is called, for people, by what it has come to. */
    @FunctionalInterface
    public interface EditName {
        String of(Chart before, Chart after);
    }

    /** @param isLookedAt whether it is taken back, not committed, when something else is done */
    Transaction(Workbench bench, EditName name, boolean isLookedAt) {
        this.bench = bench;
        this.name = name;
        this.isLookedAt = isLookedAt;
        before = bench.chart();
        from = bench.cursor();
        shownAt = from;
    }

    /** Whether it can be changed still. */
    public boolean isGoing() {
        return !ended;
    }

    /** Whether it is only looked at. */
    boolean isLookedAt() {
        return isLookedAt;
    }

    /** Ends it, since something else is done. */
    void finish() {
        if (isLookedAt) {
            cancel();
        } else {
            commit();
        }
    }

    /** The chart that every preview starts from. */
    public Chart before() {
        return before;
    }

    /** Shows what the edit makes of the chart before, in the place of what was shown until now. */
    public void preview(UnaryOperator<Chart> edit) {
        preview(edit, from);
    }

    /**
     * The same, and the cursor goes along.
     *
     * @param cursor where it stands then
     * @throws IllegalArgumentException if the chart cannot take the edit; then nothing has changed
     */
    public void preview(UnaryOperator<Chart> edit, Place cursor) {
        if (ended) {
            return;
        }
        Chart edited = sharing(edit.apply(before), before, bench.chart());
        if (edited.equals(bench.chart())) {
            bench.moveCursor(cursor);
        } else {
            bench.show(edited, cursor);
        }
        shownAt = bench.cursor();
    }

    /** Ends it as one edit, or as none if the chart is what it was. */
    public void commit() {
        if (ended) {
            return;
        }
        leave();
        if (!bench.chart().equals(before)) {
            bench.committed(name.of(before, bench.chart()));
        }
    }

    /**
     * Ends it without a trace: the chart and the cursor are what they were. Where it was only looked at and the cursor has gone
     * elsewhere since, it stays there.
     */
    public void cancel() {
        if (ended) {
            return;
        }
        leave();
        Place back = isLookedAt && !bench.cursor().equals(shownAt) ? bench.cursor() : from;
        if (!bench.chart().equals(before)) {
            bench.show(before, back);
        } else {
            bench.moveCursor(back);
        }
    }

    /** Ends it; the chart stays what it is, and nobody is told. */
    void leave() {
        ended = true;
        bench.leave(this);
    }

    /**
     * The same chart, with each round that is equal to that of an earlier chart taken from there: what is the same object need
     * not be judged or painted again.
     */
    private static Chart sharing(Chart edited, Chart before, Chart shown) {
        if (edited.equals(before)) {
            return before;
        }
        if (edited.rounds().size() != shown.rounds().size()) {
            return edited;
        }
        List<Round> rounds = new ArrayList<>();
        for (int r = 1; r <= edited.rounds().size(); r++) {
            Round round = edited.round(r);
            boolean isOld = r <= before.rounds().size() && round.equals(before.round(r));
            rounds.add(round.equals(shown.round(r)) ? shown.round(r) : isOld ? before.round(r) : round);
        }
        return edited.withRounds(rounds);
    }
}
