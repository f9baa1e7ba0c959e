package edgewright.desk.journal;

import edgewright.desk.work.Workbench;
import edgewright.file.Fingerprint;
import edgewright.file.Journal;
import edgewright.file.JournalEntry;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Keeps the unsaved work on one workbench in its journal, from edit to edit. It shows nothing. For the thread of the workbench;
 * the journal writes on its own.
 */
final class ChartKeeping {
    private final Workbench bench;
    private final Supplier<Optional<Fingerprint>> lastSeen;
    private final InstantSource clock;
    private Journal journal;
    private int edits;
    private int lastDeed;
    private boolean isLaying;

    /**
     * @param lastSeen what the file of the chart held when it was read or written last
     */
    ChartKeeping(Workbench bench, Supplier<Optional<Fingerprint>> lastSeen, Journal journal, InstantSource clock) {
        this.bench = bench;
        this.lastSeen = lastSeen;
        this.journal = journal;
        this.clock = clock;
        bench.listen(change -> {
            switch (change.kind()) {
                case OPENED, SAVED -> begin();
                case EDITED, DRAWN -> keep();
                case CURSOR, STITCH -> {}
            }
        });
    }

    /** Goes on with lost work: what {@code laying} lays on the bench is kept where the lost work is. */
    void goOn(JournalEntry lost, Journal with, Runnable laying) {
        journal.clear();
        journal.end();
        journal = with;
        isLaying = true;
        try {
            laying.run();
        } finally {
            isLaying = false;
        }
        begin();
        edits = lost.edits();
        keep();
    }

    /** The chart is put away; whether its unsaved work was to be thrown away has been asked. */
    void end() {
        journal.clear();
        journal.end();
    }

    private void begin() {
        edits = 0;
        lastDeed = deed();
        keep();
    }

    private void keep() {
        if (isLaying) {
            // Between the saved chart and the lost work on it nothing must be taken for saved.
            return;
        }
        if (deed() != lastDeed) {
            lastDeed = deed();
            edits++;
        }
        if (bench.hasUnsavedWork()) {
            // A stroke that is still going is work too.
            journal.keep(new JournalEntry(
                    bench.file(), lastSeen.get(), Math.max(1, edits), clock.instant(), bench.worked()));
        } else {
            journal.clear();
        }
    }

    private int deed() {
        return bench.lastDeed().map(Workbench.Deed::number).orElse(0);
    }
}
