package edgewright.assist.picture;

import edgewright.assist.picture.ColumnSearch.Column;
import java.util.Optional;

/**
 * Breaks loose runs where that costs nothing: a kind of column takes other stitches of the very same cost if there are fewer
 * loose runs then. It goes from run to run and never back, so there may be fewer still; it ends after a fixed amount of work, and
 * never leaves more loose runs than it found.
 */
final class FreeBreaks {
    /** In cells looked at; a few milliseconds, so that it can be done while somebody draws. */
    private static final long MOST_WORK = 150_000;

    private final Columns columns;
    private long work;

    FreeBreaks(Columns columns) {
        this.columns = columns;
    }

    void run() {
        boolean better = true;
        while (better && work < MOST_WORK) {
            better = false;
            for (int row = 1; row < columns.rounds() && work < MOST_WORK; row++) {
                work += columns.width();
                for (int[] piece : columns.loose(row)) {
                    better |= breaks(row, piece);
                }
            }
        }
    }

    private boolean breaks(int row, int[] piece) {
        for (int column : piece) {
            int kind = columns.kindOf(column);
            if (!columns.isLong(row, column) || work >= MOST_WORK) {
                return false;
            }
            work += columns.rounds();
            Optional<Column> other = columns.withoutLong(kind, row);
            if (other.isPresent()
                    && columns.increase(kind, other.get()).equals(Cost.NOTHING)
                    && helps(kind, other.get())) {
                return true;
            }
        }
        return false;
    }

    /** Puts the column in if fewer runs are loose then. */
    private boolean helps(int kind, Column other) {
        Column before = columns.found(kind);
        int less = 0;
        for (int row = 1; row < columns.rounds(); row++) {
            if (before.isLong(row) != other.isLong(row)) {
                work += 2L * columns.width();
                less += columns.loose(row).size();
                columns.put(kind, columns.task(kind), other);
                less -= columns.loose(row).size();
                columns.put(kind, columns.task(kind), before);
            }
        }
        if (less > 0) {
            columns.put(kind, columns.task(kind), other);
        }
        return less > 0;
    }
}
