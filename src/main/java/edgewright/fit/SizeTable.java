package edgewright.fit;

import edgewright.chart.Counting;
import edgewright.chart.SideShape;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * The sizes that a side can have: for each number of repeats the counts in some rounds.
 *
 * @param counting whether a corner chain is counted at each end of a side
 * @param rounds the rounds that the columns are about, in the order of the columns
 * @param rows one a size, the smallest first
 */
public record SizeTable(Counting counting, List<Integer> rounds, List<Row> rows) {
    /**
     * One size.
     *
     * @param counts one for each round of the table, in its way of counting
     */
    public record Row(int repeats, List<Integer> counts) {
        public Row {
            counts = List.copyOf(counts);
        }
    }

    public SizeTable {
        Objects.requireNonNull(counting);
        rounds = List.copyOf(rounds);
        rows = List.copyOf(rows);
    }

    /** The sizes with {@code fewest} to {@code most} repeats, both included. */
    public static SizeTable of(SideShape shape, List<Integer> rounds, int fewest, int most, Counting counting) {
        return new SizeTable(
                counting,
                rounds,
                IntStream.rangeClosed(fewest, most)
                        .mapToObj(m -> new Row(
                                m,
                                rounds.stream()
                                        .map(r -> counting.shown(shape.stitches(r, m)))
                                        .toList()))
                        .toList());
    }
}
