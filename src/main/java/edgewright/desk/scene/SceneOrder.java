package edgewright.desk.scene;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.desk.work.Seeing;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMixing;
import edgewright.draw.paint.Palette;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.texts.Language;

/**
 * What is to be painted: a border around its piece, and which part of it is looked at, how large.
 *
 * @param repeats how often the repeat is worked on each side; opposite sides alike
 * @param seeing for which hand, in whose colours; which part of the border lies on the canvas is of no account here
 * @param table what the border lies on
 * @param window the part of the border's sheet that is looked at, and its size in pixels of the screen
 */
record SceneOrder(
        Chart chart,
        PerSide<Integer> repeats,
        Seeing seeing,
        Colour table,
        Palette palette,
        Language language,
        Window window) {
    /** The edge of a stitch on the sheet. */
    static final double CELL_MM = PictureStyle.CELL_MM;

    /** How much of the middle of the yarns is white on the piece. */
    private static final double PIECE = 0.7;

    private static final double MM_PER_INCH = 25.4;

    /**
     * A part of the sheet on a screen.
     *
     * @param pxPerMm pixels of the screen for each millimetre of the sheet
     */
    record Window(double leftMm, double topMm, double pxPerMm, int widthPx, int heightPx) {}

    SceneOrder {
        seeing = seeing.withDrawn(Seeing.USUAL.drawn());
    }

    /** About how many stitches it has. */
    long stitches() {
        return ChartPicture.stitchesOfBorder(chart, repeats);
    }

    /** Whether it has more stitches than would be seen, or painted in time. */
    boolean isTooLarge() {
        return stitches() > ChartPicture.MOST_STITCHES;
    }

    /** The same with nothing to look at, which says whether two orders are for the same border as it lies. */
    boolean liesLike(SceneOrder other) {
        return repeats.equals(other.repeats)
                && seeing.equals(other.seeing)
                && table.equals(other.table)
                && palette.equals(other.palette)
                && window.equals(other.window);
    }

    /** The sheet on which the whole border lies. */
    Area sheet() {
        return ChartPicture.sheetOfBorder(chart, repeats, style());
    }

    /** As worked fabric, as fine as it can be seen at this size, with a plain piece in a soft colour that goes with the yarns. */
    PictureStyle style() {
        Colour middle = ColourMixing.average(
                chart.yarnsUsed().stream().map(Yarn::colour).toList());
        return PictureStyle.fabric(language)
                .withHand(seeing.hand())
                .withPalette(palette.withBase(ColourMixing.mix(middle, new Colour(0xffffff), PIECE)))
                .withLook(FabricFill.ofDots(CELL_MM, window.pxPerMm() * MM_PER_INCH));
    }
}
