package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;

/** The pictures that can be made of a chart. */
public final class ChartPicture {
    /** The most stitches that a picture should have; more take long and are too small to be seen. */
    public static final long MOST_STITCHES = 400_000;

    private ChartPicture() {}

    /** About how many stitches the corner has, at least as many as there are. */
    public static long stitchesOfCorner(Chart chart, PictureStyle style) {
        int rounds = chart.rounds().size();
        int repeats = style.repeatsOf(chart.shape().w());
        return rounds
                * (chart.shape().stitches(rounds, 0)
                        + 2L * repeats * chart.shape().w());
    }

    /** About how many stitches the whole border has, at least as many as there are. */
    public static long stitchesOfBorder(Chart chart, PerSide<Integer> repeats) {
        int rounds = chart.rounds().size();
        return rounds
                * repeats.stream()
                        .mapToLong(m -> chart.shape().stitches(rounds, m))
                        .sum();
    }

    /** The sheet of the whole border, with the paper around it. */
    public static Area sheetOfBorder(Chart chart, PerSide<Integer> repeats, PictureStyle style) {
        return new BorderPicture(chart, repeats, style).sheet();
    }

    /** One corner with an arm on each side; see {@link CornerPicture} for its layout and for parts of it. */
    public static Drawing corner(Chart chart, PictureStyle style, Emphasis emphasis) {
        return CornerPicture.of(chart, style, emphasis).drawing();
    }

    /**
     * The whole border around its piece, as it lies on the table.
     *
     * @param repeats how often the repeat is worked on each side; opposite sides equal
     */
    public static Drawing wholeBorder(Chart chart, PerSide<Integer> repeats, PictureStyle style) {
        return new BorderPicture(chart, repeats, style).drawing();
    }
}
