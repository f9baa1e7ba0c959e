package edgewright.assist.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Runs of long stitches that are longer than allowed, in a repeat between plain corner sections: so a run goes on over the ends
 * of the repeat, and a round whose whole repeat is long is one run without an end.
 *
 * @param most how many long stitches may lie side by side
 */
record LongRuns(int most) {

    /** Whether the stitch of a column is long in the round that is looked at. */
    interface Row {
        boolean isLong(int column);
    }

    /**
     * Pieces of runs that must each be broken: so many neighbouring columns, counted from 0, that are all long, and that are one
     * more than allowed or the whole repeat. No two pieces share a column.
     */
    List<int[]> pieces(Row row, int width) {
        int start = 0;
        while (start < width && row.isLong(start)) {
            start++;
        }
        if (start == width) {
            return List.of(columns(0, Math.min(most + 1, width), width));
        }
        List<int[]> pieces = new ArrayList<>();
        int run = 0;
        for (int step = 1; step <= width; step++) {
            run = row.isLong((start + step) % width) ? run + 1 : 0;
            if (run > most) {
                pieces.add(columns(start + step - most, most + 1, width));
                run = 0;
            }
        }
        return pieces;
    }

    private static int[] columns(int first, int count, int width) {
        int[] columns = new int[count];
        for (int i = 0; i < count; i++) {
            columns[i] = (first + i) % width;
        }
        return columns;
    }
}
