package edgewright.file;

import edgewright.chart.Chart;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * Work that is not saved yet, as it is kept against a crash.
 *
 * @param file that the chart was opened from or saved to; empty for a new one
 * @param saved what that file held then; empty for a new chart
 * @param edits made since, at least 1
 * @param at when the last of them was made
 * @param chart as it was after it
 */
public record JournalEntry(Optional<Path> file, Optional<Fingerprint> saved, int edits, Instant at, Chart chart) {
    public JournalEntry {
        if (edits < 1) {
            throw new IllegalArgumentException("work without an edit is not unsaved");
        }
    }
}
