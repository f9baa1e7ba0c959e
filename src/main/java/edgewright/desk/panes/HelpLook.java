package edgewright.desk.panes;

import edgewright.desk.work.StitchEdits;
import edgewright.desk.work.Transaction;
import edgewright.desk.work.Workbench;
import java.util.Optional;

/** Has the chart show what would help while somebody points at it; leaving takes it back without a trace. */
final class HelpLook {
    private final Workbench bench;
    private Optional<Transaction> look = Optional.empty();

    HelpLook(Workbench bench) {
        this.bench = bench;
    }

    /**
     * What it does to the eye, and what remains.
     *
     * @param stitches how many change, those of the repeat counted once
     * @param cells how many cells of the fabric look otherwise
     * @param findings how many there still are
     */
    record Seen(int stitches, int cells, int findings) {}

    /** Shows it in the chart, and nothing that was shown before. */
    Seen show(Help help) {
        leave();
        Transaction shown = bench.look((before, after) -> help.name());
        look = Optional.of(shown);
        shown.preview(help.edit());
        return new Seen(
                StitchEdits.changed(shown.before(), bench.chart()),
                help.changedCells(),
                bench.verdict().count().all());
    }

    /** Whether the chart shows something that is only looked at. */
    boolean isShown() {
        return look.filter(Transaction::isGoing).isPresent();
    }

    /** The chart is what it was. */
    void leave() {
        look.ifPresent(Transaction::cancel);
        look = Optional.empty();
    }
}
