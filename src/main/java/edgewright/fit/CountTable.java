package edgewright.fit;

import edgewright.chart.BorderShape;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * The counts of the four sides in every round of one piece.
 *
 * @param counting whether a corner chain is counted at each end of a side
 * @param rows from the base round outwards; the first element is round 0
 */
public record CountTable(Counting counting, List<Row> rows) {
    /** The counts in one round, in the table's way of counting. */
    public record Row(int round, PerSide<Integer> counts) {}

    public CountTable {
        Objects.requireNonNull(counting);
        rows = List.copyOf(rows);
    }

    /**
     * The counts when the repeat is worked that often on each side.
     *
     * @param rounds the last round of the table
     */
    public static CountTable of(BorderShape border, int rounds, PerSide<Integer> repeats, Counting counting) {
        return new CountTable(
                counting,
                IntStream.rangeClosed(0, rounds)
                        .mapToObj(r -> new Row(r, border.stitches(r, repeats).map(counting::shown)))
                        .toList());
    }
}
