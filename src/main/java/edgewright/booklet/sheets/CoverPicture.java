package edgewright.booklet.sheets;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Palette;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.texts.Messages;
import java.util.List;
import java.util.Optional;

/** The border as it looks when it is done, for the first page. */
public final class CoverPicture {
    private static final int SMALLEST_PIECE = 30;

    /** The room for the picture on the first page, nearly; enough to know what is seen of a stitch. */
    private static final double WIDTH_MM = 165;

    private static final double HEIGHT_MM = 140;

    /** Of more stitches than this only the outer corner is shown. */
    private static final long MOST_SHOWN = 80_000;

    private static final int CORNER_CELLS = 160;

    private CoverPicture() {}

    /**
     * The border around a piece of the first size of the pattern, or of one that shows it well; of a very large one its outer
     * corner.
     */
    public static Drawing of(Chart chart, BookletOptions options) {
        Optional<PerSide<Integer>> shown = repeatsShown(chart, options);
        if (shown.isEmpty()) {
            return outerCorner(chart, options);
        }
        PictureStyle style = style(options);
        Area sheet = ChartPicture.sheetOfBorder(chart, shown.get(), style);
        double scale = Math.min(WIDTH_MM / sheet.widthMm(), HEIGHT_MM / sheet.heightMm());
        FabricFill look = FabricFill.ofDots(scale * style.cellMm(), FabricFill.PRINT_DPI);
        return ChartPicture.wholeBorder(chart, shown.get(), style.withLook(look));
    }

    /**
     * How often the repeat is worked on each side of the border that is shown; empty where only its outer corner is. Opposite
     * sides are drawn alike, as long as the longer one.
     */
    public static Optional<PerSide<Integer>> repeatsShown(Chart chart, BookletOptions options) {
        int rounds = chart.rounds().size();
        PerSide<Integer> repeats = options.sizes().stream()
                .findFirst()
                .map(of -> PerSide.pairs(Math.max(of.top(), of.bottom()), Math.max(of.left(), of.right())))
                .orElseGet(() -> repeatsOfSmallPiece(chart));
        return rounds * chart.border().allStitches(rounds, repeats) > MOST_SHOWN
                ? Optional.empty()
                : Optional.of(repeats);
    }

    /** How often the repeat is worked on each side of a piece that shows the border well where no size is asked for. */
    public static PerSide<Integer> repeatsOfSmallPiece(Chart chart) {
        int rounds = chart.rounds().size();
        return PerSide.pairs(
                repeats(chart.shape(Side.TOP), Math.max(SMALLEST_PIECE, 2 * rounds)),
                repeats(chart.shape(Side.LEFT), Math.max(SMALLEST_PIECE * 2 / 3, 3 * rounds / 2)));
    }

    private static Drawing outerCorner(Chart chart, BookletOptions options) {
        CornerPicture corner = CornerPicture.of(chart, style(options).withLook(FabricFill.SMALL), Emphasis.NONE);
        return corner.tile(new CellRange(
                        0,
                        0,
                        Math.min(CORNER_CELLS, corner.layout().columns()),
                        Math.min(CORNER_CELLS * 3 / 4, corner.layout().rows())))
                .drawing();
    }

    /** Which piece the picture shows, in a sentence. */
    public static String shown(Chart chart, BookletOptions options) {
        Messages says = options.says();
        Optional<PerSide<Integer>> shown = repeatsShown(chart, options);
        if (shown.isEmpty()) {
            return says.text("cover-shown-corner");
        }
        List<String> names = options.sizeNames();
        PerSide<Integer> repeats = shown.get();
        return names.isEmpty()
                ? says.text("cover-shown-repeats", count("across", repeats.top()), count("down", repeats.left()))
                : says.text("cover-shown-size", arg("size", names.get(0)));
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
