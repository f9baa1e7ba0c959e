package edgewright.draw;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;

/** The pictures that can be made of a chart. */
public final class ChartPicture {
    private ChartPicture() {}

    /** One corner with a limb on each side; see {@link CornerPicture} for its layout and for parts of it. */
    public static Drawing corner(Chart chart, PictureStyle style, Emphasis emphasis) {
        return CornerPicture.of(chart, style, emphasis).drawing();
    }

    /**
     * The whole border around its piece, as it lies on the table.
     *
     * @param repeats how often the repeat is worked on each side; opposite sides equal
     */
    public static Drawing wholeBorder(Chart chart, PerSide repeats, PictureStyle style) {
        return new BorderPicture(chart, repeats, style).drawing();
    }
}
