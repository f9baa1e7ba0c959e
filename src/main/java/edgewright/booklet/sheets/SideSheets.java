package edgewright.booklet.sheets;

import static edgewright.texts.Arg.and;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.CellSizes;
import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.page.Anchor;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.StructureRole;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyle;
import edgewright.chart.Chart;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.YarnSign;
import edgewright.draw.side.SidePicture;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The chart as level sides, one for each side that differs from the others: whole where a page is wide enough, else in parts. */
final class SideSheets {
    /** The smallest cell: one that is read at arm's length. */
    private static final double SMALLEST_MM = 6;

    private final TextSetter setter;
    private final Messages says;
    private final PageLayout sheet;
    private final Chart chart;
    private final BookletOptions options;
    private final Emphasis emphasis;
    private final ChartSheets charts;
    private final double smallestMm;
    private final double largestMm;

    /** @param charts makes figures */
    SideSheets(TextSetter setter, Chart chart, BookletOptions options, Emphasis emphasis, ChartSheets charts) {
        this.setter = setter;
        this.says = setter.says();
        this.sheet = setter.sheet();
        this.chart = chart;
        this.options = options;
        this.emphasis = emphasis;
        this.charts = charts;
        CellSizes sizes = CellSizes.of(options, YarnSign.hasLetters(chart));
        this.smallestMm = options.cellMm().orElse(Math.max(SMALLEST_MM, sizes.smallestMm()));
        this.largestMm = Math.max(smallestMm, sizes.comfortableMm());
    }

    /** How a level side is read. */
    List<ColumnSlice> howToRead(Tag parent) {
        List<ColumnSlice> strips = new ArrayList<>(setter.paragraph(
                parent,
                options.appearance().chart().hasCorner()
                        ? says.text("chart-side-also", choice("hand", options.hand()))
                        : says.text(
                                        "chart-side-read",
                                        choice("hand", options.hand()),
                                        choice("edition", options.edition()))
                                + ChartSheets.ofLetters(chart, options)));
        List<ColumnSlice> more = new ArrayList<>(setter.paragraph(parent, says.text("chart-side-count")));
        more.set(0, more.get(0).spaced(setter.betweenPt()));
        strips.addAll(more);
        return strips;
    }

    /**
     * The sides.
     *
     * @param head what stands before them and is kept with the first where that fits on one page
     * @param title what stands over a side that is not divided
     */
    List<ColumnSlice> set(Tag parent, List<ColumnSlice> head, List<ColumnSlice> title) {
        List<ColumnSlice> strips = new ArrayList<>(head);
        for (Side side : SidePicture.differing(chart)) {
            if (options.appearance().chartPaper() == ChartPaper.POSTER) {
                SidePicture whole = picture(
                        side, CellSizes.of(options, YarnSign.hasLetters(chart)).posterMm());
                PosterChart.Whole poster = new PosterChart.Whole(
                        whole.widthMm(), whole.heightMm(), whole.drawing().title(), whole.layout(), whole::marksIn);
                strips.addAll(new PosterChart(setter, poster).set(parent, words()));
            } else {
                Optional<ColumnSlice> whole = whole(parent, side);
                if (whole.isPresent()) {
                    strips.replaceAll(strip -> strip.breaking(Break.UNWELCOME));
                    title.forEach(strip -> strips.add(strip.breaking(Break.NEVER)));
                    strips.add(whole.get());
                } else {
                    strips.addAll(inParts(parent, side));
                }
            }
        }
        return strips;
    }

    /** On one page of the pattern; empty if it is too wide or too high for that. */
    private Optional<ColumnSlice> whole(Tag parent, Side side) {
        SidePicture unit = picture(side, 1);
        double largest = Math.min(
                sheet.widestPt() / PageLayout.PT_PER_MM / unit.widthMm(),
                sheet.heightPt() / PageLayout.PT_PER_MM / unit.heightMm());
        double cellMm = options.cellMm().orElse(Math.min(largest, largestMm));
        if (cellMm > largest || cellMm < smallestMm) {
            return Optional.empty();
        }
        SidePicture picture = picture(side, cellMm);
        return Optional.of(
                charts.figure(parent, sheet, picture.widthMm(), picture.heightMm(), picture::drawing, words().inOne())
                        .spaced(sheet.linePt()));
    }

    private List<ColumnSlice> inParts(Tag parent, Side side) {
        SidePicture oneCell = picture(side, 1).tile(new CellRange(0, 0, 1, 1));
        SideCuts.Work work = new SideCuts.Work(
                chart.shape(side), chart.rounds().size(), oneCell.widthMm() - 1, oneCell.heightMm() - 1);
        double captionLines = sheet.oneColumn() ? 1 : 1.5;
        SideCuts cuts = SideCuts.fewestPages(work, pages(), captionLines, smallestMm, largestMm);
        SidePicture whole = picture(side, cuts.cellMm());
        ChartInWords words = words();
        List<ColumnSlice> strips = new ArrayList<>();
        int parts = cuts.parts().size();
        for (int i = 0; i < parts; i++) {
            SideCuts.Part part = cuts.parts().get(i);
            SidePicture cut = whole.tile(part.shown(work.columns(), work.rounds(), options.hand()));
            strips.add(charts.onPage(
                    cuts.page(), caption(parent, work, part, i + 1, parts).onNewPage(i == 0)));
            List<Integer> rounds = cut.layout().rounds(cut.layout().area());
            String told = words.ofSheet(i + 1, parts, rounds);
            ColumnSlice figure = charts.figure(
                    parent,
                    cuts.page(),
                    cut.widthMm(),
                    cut.heightMm(),
                    cut::drawing,
                    i == 0 ? words.ofWhole(parts) + " " + told : told);
            strips.add(charts.onPage(cuts.page(), figure));
        }
        return strips;
    }

    /** The pages on which parts may be printed: also on their sides. */
    private List<PageLayout> pages() {
        List<PageLayout> pages = new ArrayList<>(charts.pages());
        if (pages.size() == 1) {
            double longMm = options.paper().heightMm();
            double shortMm = options.paper().widthMm();
            pages.add(PageLayout.of(longMm, shortMm, options.edition()));
        }
        return pages;
    }

    /** Which part it is, and of what. */
    private ColumnSlice caption(Tag parent, SideCuts.Work work, SideCuts.Part part, int number, int parts) {
        String title = says.text("chart-side-part", number("part", number), count("parts", parts));
        List<String> shows = work.sections(part).stream()
                .map((Section section) -> says.text("chart-section-" + section))
                .toList();
        boolean allRounds = part.last() - part.first() == work.rounds();
        String what = allRounds
                ? says.text("chart-side-shows", and("sections", shows))
                : says.text(
                        "chart-side-rounds",
                        and("sections", shows),
                        number("first", part.first()),
                        number("last", part.last()));
        TextStyle section = setter.styles().section();
        List<Piece> pieces = new ArrayList<>();
        PageItem.Words heading = setter.words(0, section.baselinePt(), title, section);
        pieces.add(Piece.of(parent.child(StructureRole.H3), heading));
        if (!sheet.oneColumn()) {
            TextStyle small = setter.styles().small();
            pieces.add(Piece.of(
                    parent.child(StructureRole.PARAGRAPH),
                    setter.words(heading.widthPt() + sheet.linePt(), section.baselinePt(), what, small)));
        }
        return ColumnSlice.of(sheet.linePt() * (sheet.oneColumn() ? 1 : 1.5), pieces)
                .breaking(Break.NEVER)
                .anchored(new Anchor(title, 2));
    }

    private ChartInWords words() {
        return new ChartInWords(chart, options, ChartKind.SIDE);
    }

    private SidePicture picture(Side side, double cellMm) {
        return SidePicture.of(
                chart, side, ChartSheets.styleOf(options).withLegend(false).withCellMm(cellMm), emphasis);
    }
}
