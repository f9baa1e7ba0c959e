package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
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
        return stitchesOfCorner(chart, style.repeatsOf(chart));
    }

    /** The same with so many repeats on each arm. */
    public static long stitchesOfCorner(Chart chart, int repeats) {
        int rounds = chart.rounds().size();
        long perRound = 0;
        for (Arm arm : Arm.values()) {
            SideShape shape = chart.shape(arm.side());
            perRound += shape.length(arm.atCorner(), rounds) + (long) repeats * shape.w();
        }
        return rounds * perRound;
    }

    /** About how many stitches the whole border has, at least as many as there are. */
    public static long stitchesOfBorder(Chart chart, PerSide<Integer> repeats) {
        int rounds = chart.rounds().size();
        return rounds * chart.border().allStitches(rounds, repeats);
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
