package edgewright.fit;

import edgewright.chart.Side;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The stitches of the base round along one edge.
 *
 * @param stitches the stitches to pick up; the side closes with them
 */
public record PickUp(Side side, Edge edge, int stitches) {
    /**
     * A marker on the edge, and the stitches of the base round from the corner up to it. Source of marking off quarters:
     * https://knotsewcute.blogspot.com/2013/12/simple-tip-when-adding-crochet-border.html?m=1
     *
     * @param quarter 1 to 4; 4 is the end of the edge
     * @param along how far along the edge it is: millimetres of an edge that was measured, else stitches or rows
     * @param stitches the stitches up to it
     */
    public record Mark(int quarter, int along, int stitches) {}

    /** How the stitches are spread along the rows or stitches of the edge; empty for an edge that was measured. */
    public Optional<RowSpread> spread() {
        if (edge instanceof Edge.OfRows rows) {
            return Optional.of(new RowSpread(rows.rows(), stitches));
        }
        if (edge instanceof Edge.OfStitches row) {
            return Optional.of(new RowSpread(row.stitches(), stitches));
        }
        return Optional.empty();
    }

    /** The marks at each quarter of the edge, the last one at its end. Halves are rounded up. */
    public List<Mark> quarters() {
        Optional<RowSpread> spread = spread();
        int length = spread.map(RowSpread::rows).orElseGet(() -> (int) Math.round(((Edge.OfLength) edge).lengthMm()));
        return IntStream.rangeClosed(1, 4)
                .mapToObj(quarter -> {
                    int along = quarter(length, quarter);
                    return new Mark(
                            quarter,
                            along,
                            spread.map(rows -> rows.upTo(along)).orElseGet(() -> quarter(stitches, quarter)));
                })
                .toList();
    }

    private static int quarter(int whole, int quarter) {
        return new RowSpread(4, whole).upTo(quarter);
    }
}
