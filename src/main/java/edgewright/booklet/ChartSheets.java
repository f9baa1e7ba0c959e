package edgewright.booklet;

import edgewright.booklet.Strip.Break;
import edgewright.booklet.Strip.Piece;
import edgewright.chart.Chart;
import edgewright.draw.Area;
import edgewright.draw.CornerPicture;
import edgewright.draw.Drawing;
import edgewright.draw.Emphasis;
import edgewright.draw.PictureStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The chart on as many sheets as it needs, with how to read it and what the marks mean. */
final class ChartSheets {
    static final double COMFORTABLE_CELL_MM = 6.5;
    /** From the most comfortable to the smallest that is still easily read. */
    static final List<Double> LEGEND_CELLS_MM = List.of(5.8, 5.4, 5.0);

    private static final double BRACKET_CELLS = 2.4;

    private final TextSetter setter;
    private final Sheet sheet;
    private final Chart chart;
    private final BookletOptions options;
    private final Emphasis emphasis;
    private final LegendSetter legend;

    ChartSheets(TextSetter setter, Chart chart, BookletOptions options, Emphasis emphasis) {
        this.setter = setter;
        this.sheet = setter.sheet();
        this.chart = chart;
        this.options = options;
        this.emphasis = emphasis;
        this.legend = new LegendSetter(sheet, chart, options.terms(), style(1), emphasis);
    }

    List<Strip> set(Tag parent, Anchor anchor) {
        List<Strip> head = new ArrayList<>(setter.partHeading(parent, anchor));
        head.set(0, head.get(0).onNewPage(true));
        head.addAll(howToRead(parent));
        return inArms(parent, head, sheet.widthPt())
                .or(() -> underLegend(parent, head, sheet.widthPt()))
                .or(() -> inArms(parent, head, sheet.widestPt()))
                .or(() -> underLegend(parent, head, sheet.widestPt()))
                .orElseGet(() -> afterLegend(parent, head));
    }

    /** On one page under what is said of it, with the legend between its two limbs. */
    private Optional<List<Strip>> inArms(Tag parent, List<Strip> head, double widthPt) {
        return whole(widthPt, sheet.heightPt() - height(head) - sheet.linePt())
                .flatMap(picture -> legendInArms(picture).map(cellMm -> {
                    Area arms = arms(picture);
                    Strip chart = figure(parent, picture, picture::drawing, List.of());
                    List<Piece> pieces = new ArrayList<>(chart.pieces());
                    double left = leftOf(picture) + arms.xMm() * Sheet.PT_PER_MM;
                    pieces.add(legend.column(parent, cellMm, left, arms.yMm() * Sheet.PT_PER_MM));
                    return onePage(
                            head, List.of(Strip.of(chart.heightPt(), pieces).spaced(sheet.linePt())));
                }));
    }

    /** On one page under what is said of it and the legend. */
    private Optional<List<Strip>> underLegend(Tag parent, List<Strip> head, double widthPt) {
        Strip columns = legend.columns(parent, LEGEND_CELLS_MM.get(1), 0, sheet.widthPt())
                .spaced(sheet.linePt());
        double over = height(head) + height(List.of(columns)) + sheet.linePt();
        return whole(widthPt, sheet.heightPt() - over)
                .map(picture -> onePage(
                        head,
                        List.of(
                                columns,
                                figure(parent, picture, picture::drawing, List.of())
                                        .spaced(sheet.linePt()))));
    }

    /** On pages of its own, one or many; what is said of it and the legend need no new page. */
    private List<Strip> afterLegend(Tag parent, List<Strip> head) {
        List<Strip> strips = new ArrayList<>(head);
        strips.replaceAll(strip -> strip.onNewPage(false).breaking(Break.NEVER));
        Optional<CornerPicture> alone = whole(sheet.widestPt(), sheet.heightPt());
        if (alone.isPresent()) {
            strips.add(legend.columns(parent, LEGEND_CELLS_MM.get(0), 0, sheet.widthPt())
                    .spaced(sheet.linePt()));
            strips.add(
                    figure(parent, alone.get(), alone.get()::drawing, List.of()).onNewPage(true));
        } else {
            strips.addAll(new TiledChart(setter, chart, options, this, legend).set(parent));
        }
        return strips;
    }

    private static List<Strip> onePage(List<Strip> head, List<Strip> chart) {
        List<Strip> page = new ArrayList<>(head);
        page.addAll(chart.subList(0, chart.size() - 1));
        page.replaceAll(strip -> strip.breaking(Break.NEVER));
        page.add(chart.get(chart.size() - 1));
        return page;
    }

    private List<Strip> howToRead(Tag parent) {
        List<Strip> strips = new ArrayList<>(setter.paragraph(parent, Texts.of("chart.read")));
        List<Strip> more = new ArrayList<>(setter.paragraph(parent, Texts.of("chart.limbs")));
        more.set(0, more.get(0).spaced(sheet.halfLinePt()));
        strips.addAll(more);
        return strips;
    }

    /** The whole chart with cells as large as the room allows or as they were asked for; empty if they would be too small. */
    private Optional<CornerPicture> whole(double widthPt, double heightPt) {
        CornerPicture unit = picture(1);
        double largest =
                Math.min(widthPt / Sheet.PT_PER_MM / unit.widthMm(), heightPt / Sheet.PT_PER_MM / unit.heightMm());
        double cellMm = options.cellMm().orElse(Math.min(largest, COMFORTABLE_CELL_MM));
        return cellMm > largest || cellMm < Appearance.SMALLEST_CELL_MM
                ? Optional.empty()
                : Optional.of(picture(cellMm));
    }

    /** The largest legend that fits in the arms of a chart. */
    private Optional<Double> legendInArms(CornerPicture picture) {
        Area arms = arms(picture);
        return LEGEND_CELLS_MM.stream()
                .filter(cellMm -> {
                    Drawing column = legend.drawing(cellMm);
                    return column.widthMm() <= arms.widthMm() && column.heightMm() <= arms.heightMm();
                })
                .findFirst();
    }

    /** The empty part of the sheet between the two limbs, inside the brackets of the repeats. */
    private Area arms(CornerPicture picture) {
        double limbMm =
                (chart.rounds().size() + 1 + BRACKET_CELLS) * picture.layout().cellMm();
        Area cells = picture.layout().area();
        double x = cells.xMm() + limbMm;
        double y = cells.yMm() + limbMm;
        return Area.between(x, y, Math.max(x, picture.widthMm()), Math.max(y, picture.heightMm()));
    }

    /** A picture of the chart, with what is laid over it. */
    Strip figure(Tag parent, CornerPicture picture, Supplier<Drawing> drawing, List<Ink> over) {
        double width = picture.widthMm() * Sheet.PT_PER_MM;
        double height = picture.heightMm() * Sheet.PT_PER_MM;
        Tag figure = parent.figure(
                Texts.of("chart.alternative", chart.title(), chart.rounds().size()));
        List<Piece> pieces = new ArrayList<>();
        double left = leftOf(picture);
        pieces.add(Piece.of(figure, new Ink.Art(left, 0, width, height, drawing, 0, 0, 1)));
        if (!over.isEmpty()) {
            pieces.add(new Piece(
                    Optional.empty(),
                    over.stream().map(ink -> ink.moved(left, 0)).toList()));
        }
        return Strip.of(sheet.onGrid(height), pieces);
    }

    /** The left edge of a picture: that of the column, or as far in the margin as it must be to stand in the middle. */
    private double leftOf(CornerPicture picture) {
        return Math.min(0, (sheet.widthPt() - picture.widthMm() * Sheet.PT_PER_MM) / 2);
    }

    /** The chart with cells of that size. */
    CornerPicture picture(double cellMm) {
        return CornerPicture.of(chart, style(cellMm), emphasis);
    }

    private PictureStyle style(double cellMm) {
        return styleOf(options).withLegend(false).withCellMm(cellMm);
    }

    /** How an edition draws a chart, for either hand. */
    static PictureStyle styleOf(BookletOptions options) {
        PictureStyle style =
                options.edition() == Edition.BLACK_AND_WHITE ? PictureStyle.BLACK_AND_WHITE : PictureStyle.PRINT;
        return style.withHand(options.hand());
    }

    private static double height(List<Strip> strips) {
        return strips.stream()
                .mapToDouble(strip -> strip.heightPt() + strip.spaceAbovePt())
                .sum();
    }
}
