package edgewright.draw.shop;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMixing;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The finished border around a piece, in the middle of a sheet of an exact number of pixels. The piece is plain, in a soft colour
 * that has something of all yarns; the title stands on it.
 */
public final class ShopPicture {
    /** The colours of piece and table as parts of the way from the middle of the yarns to white. */
    private static final double PIECE = 0.7;

    private static final double TABLE = 0.88;

    /** Free on each side, as a part of the shorter side of the sheet. */
    private static final double EDGE = 0.05;

    /** How wide a piece is that nobody gave a size, in widths of its border: it should be seen, and the stitches too. */
    private static final double PIECE_IN_BORDERS = 1.7;

    private static final int SMALLEST_PIECE = 24;

    private final Chart chart;
    private final ShopSize size;
    private final PictureStyle style;

    private ShopPicture(Chart chart, ShopSize size, PictureStyle style) {
        this.chart = chart;
        this.size = size;
        this.style = style;
    }

    /**
     * How often the repeat is worked on each side where nobody says: so that the border fills a sheet of this size well.
     */
    public static PerSide<Integer> repeatsFor(Chart chart, ShopSize size) {
        double aspect = (double) size.widthPx() / size.heightPx();
        int around = 2 * (chart.rounds().size() + 1);
        double shorter = Math.max(SMALLEST_PIECE, PIECE_IN_BORDERS * around / 2);
        boolean upright = aspect < 1;
        Side narrow = upright ? Side.TOP : Side.LEFT;
        Side wide = upright ? Side.LEFT : Side.TOP;
        int few = repeats(chart.shape(narrow), shorter);
        double cells = chart.shape(narrow).stitches(0, few) + around;
        int many = repeats(chart.shape(wide), cells * (upright ? 1 / aspect : aspect) - around);
        return upright ? PerSide.pairs(few, many) : PerSide.pairs(many, few);
    }

    private static int repeats(SideShape shape, double stitches) {
        return Math.max(1, (int) Math.round((stitches - shape.fewestStitches(0)) / shape.w()));
    }

    /**
     * The picture.
     *
     * @param repeats how often the repeat is worked on each side; opposite sides equal
     * @param titled whether title and designer stand on the piece
     * @param style in which hand and inking it is drawn; its cells are made to fit, and it shows the fabric alone
     */
    public static Drawing of(Chart chart, PerSide<Integer> repeats, ShopSize size, boolean titled, PictureStyle style) {
        return new ShopPicture(chart, size, style).drawing(repeats, titled);
    }

    private Drawing drawing(PerSide<Integer> repeats, boolean titled) {
        boolean inColour = style.inking() == ColourMode.COLOUR;
        Colour middle = ColourMixing.average(
                chart.yarnsUsed().stream().map(Yarn::colour).toList());
        Colour piece = inColour ? soft(middle, PIECE) : style.palette().base();
        double cellPx = cellPx(repeats);
        PictureStyle fabric = style.withFabric(true)
                .withMarks(false)
                .withGrid(false)
                .withPalette(style.palette().withBase(piece))
                .withLook(FabricFill.ofDots(ShopSize.mm(cellPx), ShopSize.DPI))
                .withCellMm(ShopSize.mm(cellPx));
        Drawing border = ChartPicture.wholeBorder(chart, repeats, fabric);
        double widthMm = ShopSize.mm(size.widthPx());
        double heightMm = ShopSize.mm(size.heightPx());
        // On whole pixels, as the sheet of the border is.
        double rightMm = ShopSize.mm(Math.floor((size.widthPx() - border.widthMm() / ShopSize.mm(1)) / 2));
        double downMm = ShopSize.mm(Math.floor((size.heightPx() - border.heightMm() / ShopSize.mm(1)) / 2));
        List<Mark> marks = new ArrayList<>();
        Colour table = inColour ? soft(middle, TABLE) : style.palette().paper();
        marks.add(Mark.beside(
                MarkKind.PAPER, List.of(new Shape.Fill(PenPath.rectangle(new Area(0, 0, widthMm, heightMm)), table))));
        border.marks().stream()
                .filter(mark -> mark.kind().layer() != Layer.PAPER)
                .map(mark -> moved(mark, rightMm, downMm))
                .forEach(marks::add);
        if (titled) {
            pieceOf(border)
                    .flatMap(area -> new PieceTitle(area.moved(rightMm, downMm), ColourMixing.on(piece))
                            .of(chart.title(), chart.designer()))
                    .ifPresent(marks::add);
        }
        return new Drawing(widthMm, heightMm, border.title(), border.description(), marks);
    }

    /** Whole pixels, so that stitches are sharp; a very large border has to do with less than one. */
    private double cellPx(PerSide<Integer> repeats) {
        int around = 2 * (chart.rounds().size() + 1);
        double edge = 2 * EDGE * Math.min(size.widthPx(), size.heightPx());
        double across = (size.widthPx() - edge) / (chart.shape(Side.TOP).stitches(0, repeats.top()) + around);
        double down = (size.heightPx() - edge) / (chart.shape(Side.LEFT).stitches(0, repeats.left()) + around);
        double fits = Math.min(across, down);
        return fits > 1 ? Math.floor(fits) : fits;
    }

    private static Optional<Area> pieceOf(Drawing border) {
        return border.marks().stream()
                .filter(mark -> mark.kind() == MarkKind.FABRIC_PIECE)
                .findFirst()
                .map(Mark::bounds);
    }

    private static Mark moved(Mark mark, double rightMm, double downMm) {
        List<Shape> shapes = mark.shapes().stream()
                .map(shape -> shape.moved(rightMm, downMm))
                .toList();
        return new Mark(mark.kind(), mark.cell(), mark.place(), mark.yarn(), shapes);
    }

    private static Colour soft(Colour middle, double part) {
        return ColourMixing.mix(middle, new Colour(0xffffff), part);
    }
}
