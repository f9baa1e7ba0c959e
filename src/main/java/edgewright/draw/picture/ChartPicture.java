package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.SideShape;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Area;
import java.util.List;

/** The pictures that can be made of a chart. */
public final class ChartPicture {
    /** The most stitches that a picture should have; more take long and are too small to be seen. */
    public static final long MOST_STITCHES = 400_000;

    private ChartPicture() {}

    /** A picture that is asked for the marks of a part of it, as by a screen, whatever part of the border it shows. */
    public interface InParts {
        /** Where its cells lie. */
        CellLayout layout();

        /** The width of the sheet. */
        double widthMm();

        /** The height of the sheet. */
        double heightMm();

        /** The paper, and the marks that lie in an area or touch it, from the lowest to the topmost. */
        List<Mark> marksIn(Area area);

        /**
         * Where a place of the chart shows: for every cell in which it is drawn, that cell with all that a change of its stitch
         * or of its flags can alter.
         */
        List<Area> areasOf(Place place);
    }

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
        return BorderPicture.sheetOf(chart, repeats, style);
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
        return BorderPicture.of(chart, repeats, style).drawing();
    }
}
