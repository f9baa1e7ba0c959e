package edgewright.booklet.sheets;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Palette;
import edgewright.draw.picture.CellRange;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import java.util.Optional;

/** The border as it looks when it is done, for the first page. */
public final class CoverPicture {
    private static final int SMALLEST_PIECE = 30;

    /** Of more stitches than this each is a flat square: its body would be finer than print. */
    private static final long MOST_WITH_BODY = 24_000;

    /** Of more stitches than this only the outer corner is shown. */
    private static final long MOST_SHOWN = 80_000;

    private static final int CORNER_CELLS = 160;

    private CoverPicture() {}

    /**
     * The border around a piece of the first size of the pattern, or of one that shows it well; of a very large one its outer
     * corner. Opposite sides are drawn alike, as long as the longer one.
     */
    public static Drawing of(Chart chart, BookletOptions options) {
        int rounds = chart.rounds().size();
        Optional<PerSide<Integer>> first = options.sizes().stream().findFirst();
        int across = first.map(of -> Math.max(of.top(), of.bottom()))
                .orElseGet(() -> repeats(chart.shape(Side.TOP), Math.max(SMALLEST_PIECE, 2 * rounds)));
        int down = first.map(of -> Math.max(of.left(), of.right()))
                .orElseGet(() -> repeats(chart.shape(Side.LEFT), Math.max(SMALLEST_PIECE * 2 / 3, 3 * rounds / 2)));
        PerSide<Integer> repeats = PerSide.pairs(across, down);
        long stitches = rounds * chart.border().allStitches(rounds, repeats);
        if (stitches > MOST_SHOWN) {
            PictureStyle flat = style(options).withLook(FabricFill.FLAT);
            CornerPicture corner = CornerPicture.of(chart, flat, Emphasis.NONE);
            return corner.tile(new CellRange(
                            0,
                            0,
                            Math.min(CORNER_CELLS, corner.layout().columns()),
                            Math.min(CORNER_CELLS * 3 / 4, corner.layout().rows())))
                    .drawing();
        }
        FabricFill look = stitches > MOST_WITH_BODY ? FabricFill.FLAT : FabricFill.WORKED;
        return ChartPicture.wholeBorder(chart, repeats, style(options).withLook(look));
    }

    /** Fabric as an edition shows it, for either hand. */
    static PictureStyle style(BookletOptions options) {
        PictureStyle fabric = PictureStyle.fabric(options.language());
        PictureStyle style = options.edition() == Edition.BLACK_AND_WHITE
                ? fabric.withInking(ColourMode.BLACK).withPalette(Palette.BLACK)
                : fabric;
        return style.withHand(options.hand());
    }

    private static int repeats(SideShape shape, int stitches) {
        return Math.max(1, Math.round((stitches - shape.fewestStitches(0)) / (float) shape.w()));
    }
}
