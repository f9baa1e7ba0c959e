package edgewright.booklet.sheets;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.CellSizes;
import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.chart.Chart;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.YarnSign;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The chart on as many sheets as it needs, with how to read it and what the marks mean. */
public final class ChartSheets {
    private static final double A3_SHORT_MM = 297;
    private static final double A3_LONG_MM = 420;

    /** From the most comfortable to the smallest that is still easily read. */
    static final List<Double> LEGEND_CELLS_MM = List.of(5.8, 5.4, 5.0, 4.6);

    /** Squares that are smaller by less than this are as good. */
    private static final double NEARLY = 0.85;

    private static final double BRACKET_CELLS = 2.4;

    private final TextSetter setter;
    private final Messages says;
    private final PageLayout sheet;
    private final Chart chart;
    private final BookletOptions options;
    private final Emphasis emphasis;
    private final LegendSetter legend;
    private final CellSizes sizes;

    public ChartSheets(TextSetter setter, Chart chart, BookletOptions options, Emphasis emphasis) {
        this.setter = setter;
        this.says = setter.says();
        this.sheet = setter.sheet();
        this.chart = chart;
        this.options = options;
        this.emphasis = emphasis;
        this.sizes = CellSizes.of(options, YarnSign.hasLetters(chart));
        this.legend = new LegendSetter(sheet, chart, options.telling().terms(), style(1), emphasis, says);
    }

    /**
     * What is said of the chart begins where the page is filled to. The chart stands there too if its squares come out about
     * as large as on a page of its own; else it has the next page for itself, or all of it begins a page.
     *
     * @param links the ways to the rounds in words
     * @param roomPt how much of the page is left
     */
    public List<ColumnSlice> set(Tag parent, ChartLinks links, double roomPt) {
        List<ColumnSlice> head = new ArrayList<>(links.toWords(setter.partHeading(parent, links.chart()), parent));
        SideSheets sides = new SideSheets(setter, chart, options, emphasis, this);
        if (!options.appearance().chart().hasCorner()) {
            return sides.set(parent, sideHead(parent, head, sides), List.of());
        }
        head.addAll(howToRead(parent));
        if (!options.appearance().chart().hasSide()) {
            return corner(parent, head, roomPt);
        }
        head.addAll(spaced(sides.howToRead(parent)));
        List<ColumnSlice> strips = new ArrayList<>(corner(parent, head, roomPt));
        List<ColumnSlice> heading = setter.sectionHeading(
                parent, says.text("chart-side-heading"), Optional.of(new Anchor(says.text("chart-side-heading"), 2)));
        strips.addAll(sides.set(parent, List.of(), heading));
        return strips;
    }

    private List<ColumnSlice> spaced(List<ColumnSlice> paragraph) {
        List<ColumnSlice> strips = new ArrayList<>(paragraph);
        strips.set(0, strips.get(0).spaced(setter.betweenPt()));
        return strips;
    }

    /** What stands before a side that is printed alone: how to read it, and the legend. */
    private List<ColumnSlice> sideHead(Tag parent, List<ColumnSlice> heading, SideSheets sides) {
        List<ColumnSlice> head = new ArrayList<>(heading);
        head.addAll(sides.howToRead(parent));
        if (legend.inRows()) {
            head.addAll(legend.rows(parent, sizes.comfortableMm(), setter));
        } else {
            head.replaceAll(strip -> strip.breaking(Break.NEVER));
            head.add(legend.columns(parent, LEGEND_CELLS_MM.get(0), 0, sheet.widthPt())
                    .spaced(sheet.linePt()));
        }
        return head;
    }

    private List<ColumnSlice> corner(Tag parent, List<ColumnSlice> head, double roomPt) {
        if (sheet.oneColumn() || options.appearance().chartPaper() != ChartPaper.SAME) {
            return afterLegend(parent, head, roomPt);
        }
        double left = roomPt - head.get(0).spaceAbovePt();
        Optional<OnOnePage> fresh = onOnePage(parent, head, sheet.heightPt());
        Optional<OnOnePage> here = onOnePage(parent, head, left)
                .filter(on ->
                        on.cellMm() >= NEARLY * fresh.map(OnOnePage::cellMm).orElse(0.0));
        if (here.isPresent()) {
            return here.get().strips();
        }
        List<ColumnSlice> parted = afterLegend(parent, head, roomPt);
        boolean begins = heightOfFirstPage(parted) <= left && roomPt < sheet.heightPt();
        if (begins || fresh.isEmpty()) {
            return parted;
        }
        List<ColumnSlice> strips = new ArrayList<>(fresh.get().strips());
        strips.set(0, strips.get(0).onNewPage(true));
        return strips;
    }

    /** The chart with all that is said of it, never cut. */
    private record OnOnePage(double cellMm, List<ColumnSlice> strips) {}

    private Optional<OnOnePage> onOnePage(Tag parent, List<ColumnSlice> head, double heightPt) {
        return inArms(parent, head, sheet.widthPt(), heightPt)
                .or(() -> underLegend(parent, head, sheet.widthPt(), heightPt))
                .or(() -> inArms(parent, head, sheet.widestPt(), heightPt))
                .or(() -> underLegend(parent, head, sheet.widestPt(), heightPt));
    }

    private static double heightOfFirstPage(List<ColumnSlice> strips) {
        return height(strips.stream()
                .takeWhile(strip -> !strip.newPage() && strip.sheet().isEmpty())
                .toList());
    }

    /** Under what is said of it, with the legend between its two arms. */
    private Optional<OnOnePage> inArms(Tag parent, List<ColumnSlice> head, double widthPt, double heightPt) {
        return whole(widthPt, heightPt - height(head) - sheet.linePt())
                .flatMap(picture -> legendInArms(picture).map(cellMm -> {
                    Area arms = arms(picture);
                    ColumnSlice chart = figure(parent, sheet, picture, picture::drawing, inWords());
                    List<Piece> pieces = new ArrayList<>(chart.pieces());
                    double left = leftOf(sheet, picture.widthMm()) + arms.xMm() * PageLayout.PT_PER_MM;
                    pieces.add(legend.column(parent, cellMm, left, arms.yMm() * PageLayout.PT_PER_MM));
                    return onePage(
                            picture,
                            head,
                            List.of(ColumnSlice.of(chart.heightPt(), pieces).spaced(sheet.linePt())));
                }));
    }

    /** Under what is said of it and the legend, which is printed smaller rather than parted from the chart. */
    private Optional<OnOnePage> underLegend(Tag parent, List<ColumnSlice> head, double widthPt, double heightPt) {
        return LEGEND_CELLS_MM.stream()
                .skip(1)
                .map(cellMm ->
                        legend.columns(parent, cellMm, 0, sheet.widthPt()).spaced(sheet.linePt()))
                .flatMap(columns -> underLegend(parent, head, columns, widthPt, heightPt).stream())
                .findFirst();
    }

    private Optional<OnOnePage> underLegend(
            Tag parent, List<ColumnSlice> head, ColumnSlice columns, double widthPt, double heightPt) {
        double over = height(head) + height(List.of(columns)) + sheet.linePt();
        return whole(widthPt, heightPt - over)
                .map(picture -> onePage(
                        picture,
                        head,
                        List.of(
                                columns,
                                figure(parent, sheet, picture, picture::drawing, inWords())
                                        .spaced(sheet.linePt()))));
    }

    /** On pages of its own, one or many; what is said of it and the legend need no new page. */
    private List<ColumnSlice> afterLegend(Tag parent, List<ColumnSlice> head, double roomPt) {
        List<ColumnSlice> strips = new ArrayList<>(head);
        if (legend.inRows()) {
            strips.addAll(legend.rows(parent, sizes.comfortableMm(), setter));
        } else {
            strips.replaceAll(strip -> strip.breaking(Break.NEVER));
        }
        boolean poster = options.appearance().chartPaper() == ChartPaper.POSTER;
        Optional<OnPage> alone = poster ? Optional.empty() : largest();
        if (!legend.inRows() && (poster || alone.isPresent())) {
            strips.add(legend.columns(parent, LEGEND_CELLS_MM.get(0), 0, sheet.widthPt())
                    .spaced(sheet.linePt()));
        }
        if (poster) {
            strips.addAll(new PosterChart(setter, whole(sizes.posterMm())).set(parent, sheetWords()));
        } else if (alone.isPresent()) {
            CornerPicture picture = alone.get().picture();
            PageLayout page = alone.get().page();
            strips.add(onPage(
                    page,
                    figure(parent, page, picture, picture::drawing, inWords()).onNewPage(true)));
        } else {
            strips.addAll(new TiledChart(setter, chart, options, this, legend)
                    .set(parent, pages(), sizes, roomPt - height(strips) - sheet.linePt()));
        }
        return strips;
    }

    /** A picture, and the page that it fits on. */
    private record OnPage(PageLayout page, CornerPicture picture) {}

    /** The pages that the chart may be printed on. */
    List<PageLayout> pages() {
        return options.appearance().chartPaper() == ChartPaper.A3
                ? List.of(
                        PageLayout.of(A3_SHORT_MM, A3_LONG_MM, options.edition()),
                        PageLayout.of(A3_LONG_MM, A3_SHORT_MM, options.edition()))
                : List.of(sheet);
    }

    /** The whole chart alone on a page, as large as it can be there; empty if it fits on none. */
    private Optional<OnPage> largest() {
        return pages().stream()
                .flatMap(page ->
                        whole(page.widestPt(), page.heightPt()).map(picture -> new OnPage(page, picture)).stream())
                .max(Comparator.comparingDouble(on -> on.picture().layout().cellMm()));
    }

    /** On that page, if it is not one like the rest. */
    ColumnSlice onPage(PageLayout page, ColumnSlice strip) {
        return page.equals(sheet) ? strip : strip.onSheet(page);
    }

    private static OnOnePage onePage(CornerPicture picture, List<ColumnSlice> head, List<ColumnSlice> chart) {
        List<ColumnSlice> page = new ArrayList<>(head);
        page.addAll(chart.subList(0, chart.size() - 1));
        page.replaceAll(strip -> strip.breaking(Break.NEVER));
        page.add(chart.get(chart.size() - 1));
        return new OnOnePage(picture.layout().cellMm(), page);
    }

    private List<ColumnSlice> howToRead(Tag parent) {
        List<ColumnSlice> strips = new ArrayList<>(setter.paragraph(
                parent,
                (options.edition() == Edition.BLACK_AND_WHITE ? says.text("chart-read-black") : says.text("chart-read"))
                        + ofLetters(chart, options)));
        if (sheet.oneColumn()) {
            // A link stands between the heading and these words.
            strips.set(0, strips.get(0).spaced(setter.betweenPt()));
        }
        strips.addAll(spaced(setter.paragraph(parent, says.text("chart-limbs"))));
        return strips;
    }

    /** The whole chart with cells as large as the room allows or as they were asked for; empty if they would be too small. */
    private Optional<CornerPicture> whole(double widthPt, double heightPt) {
        CornerPicture unit = picture(1);
        double largest = Math.min(
                widthPt / PageLayout.PT_PER_MM / unit.widthMm(), heightPt / PageLayout.PT_PER_MM / unit.heightMm());
        double cellMm = options.cellMm().orElse(Math.min(largest, sizes.comfortableMm()));
        return cellMm > largest || cellMm < sizes.smallestMm() ? Optional.empty() : Optional.of(picture(cellMm));
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

    /** The empty part of the sheet between the two arms, inside the brackets of the repeats. */
    private Area arms(CornerPicture picture) {
        double armMm =
                (chart.rounds().size() + 1 + BRACKET_CELLS) * picture.layout().cellMm();
        Area cells = picture.layout().area();
        double x = cells.xMm() + armMm;
        double y = cells.yMm() + armMm;
        return Area.between(x, y, Math.max(x, picture.widthMm()), Math.max(y, picture.heightMm()));
    }

    /** A picture of the chart on such a page. */
    ColumnSlice figure(
            Tag parent, PageLayout page, CornerPicture picture, Supplier<Drawing> drawing, String alternative) {
        return figure(parent, page, picture.widthMm(), picture.heightMm(), drawing, alternative);
    }

    /** A picture of that size on such a page. */
    ColumnSlice figure(
            Tag parent,
            PageLayout page,
            double widthMm,
            double heightMm,
            Supplier<Drawing> drawing,
            String alternative) {
        double width = widthMm * PageLayout.PT_PER_MM;
        double height = heightMm * PageLayout.PT_PER_MM;
        Tag figure = parent.figure(alternative);
        PageItem.Art art = new PageItem.Art(leftOf(page, widthMm), 0, width, height, drawing, 0, 0, 1);
        return ColumnSlice.of(page.onGrid(height), List.of(Piece.of(figure, art)));
    }

    /** The whole chart on one sheet, for whoever does not see it. */
    private String inWords() {
        return sheetWords().inOne();
    }

    /** What is heard of the sheets of this chart. */
    ChartInWords sheetWords() {
        return new ChartInWords(chart, options, ChartKind.CORNER);
    }

    /** The left edge of a picture: that of the column, or as far in the margin as it must be to stand in the middle. */
    static double leftOf(PageLayout page, double widthMm) {
        return Math.min(0, (page.widthPt() - widthMm * PageLayout.PT_PER_MM) / 2);
    }

    private PosterChart.Whole whole(double cellMm) {
        CornerPicture picture = picture(cellMm);
        return new PosterChart.Whole(
                picture.widthMm(), picture.heightMm(), says.text("chart-heading"), picture.layout(), picture::marksIn);
    }

    /** The chart with cells of that size. */
    CornerPicture picture(double cellMm) {
        return CornerPicture.of(chart, style(cellMm), emphasis);
    }

    private PictureStyle style(double cellMm) {
        return styleOf(options).withLegend(false).withCellMm(cellMm);
    }

    /** What is said of letters in squares and of lines between areas, after a sentence; empty for a chart that has none. */
    static String ofLetters(Chart chart, BookletOptions options) {
        return options.edition() == Edition.BLACK_AND_WHITE && YarnSign.hasLetters(chart)
                ? " " + options.says().text("chart-letters")
                : "";
    }

    /** How an edition draws a chart, for either hand. */
    static PictureStyle styleOf(BookletOptions options) {
        PictureStyle style = options.edition() == Edition.BLACK_AND_WHITE
                ? PictureStyle.blackAndWhite(options.language())
                : PictureStyle.print(options.language());
        return style.withHand(options.hand()).withMarkStyle(options.appearance().marks());
    }

    private static double height(List<ColumnSlice> strips) {
        return strips.stream()
                .mapToDouble(strip -> strip.heightPt() + strip.spaceAbovePt())
                .sum();
    }
}
