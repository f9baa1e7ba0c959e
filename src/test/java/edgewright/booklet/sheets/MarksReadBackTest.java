package edgewright.booklet.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.ChartOnPaper;
import edgewright.booklet.MovedMarks;
import edgewright.booklet.PaintedPage;
import edgewright.booklet.PatternPages;
import edgewright.booklet.Published;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyles;
import edgewright.booklet.page.YarnChips;
import edgewright.booklet.press.EmbeddedFonts;
import edgewright.booklet.press.MarkStamps;
import edgewright.booklet.press.PagePrinter;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Edits;
import edgewright.chart.HookHand;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.draw.EnglishStyle;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.testing.RandomCharts;
import edgewright.testing.SampleFiles;
import edgewright.texts.English;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every mark of a chart is read back from the printed pages by a reader that knows the signs from the legend and nothing of
 * the program that wrote them: none is missing, none is there twice, none lies in another square or in another yarn.
 */
public class MarksReadBackTest {
    /** A chart on one sheet. */
    private static final Chart CHART = Published.sample("mooring-rope");

    private static final double CELL_MM = 5;

    public static Stream<String> samples() throws IOException {
        return SampleFiles.all().stream()
                .map(file -> file.getFileName().toString().replace(".border.json", ""));
    }

    /** What the sheets of a chart show. */
    private static List<PageItem.Art> sheets(Chart chart, BookletOptions options) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PageLayout paper = PageLayout.of(options.paper(), options.edition());
            TextSetter setter = new TextSetter(
                    paper,
                    TextStyles.of(new EmbeddedFonts(document).typefaces(), paper),
                    new YarnChips(chart, paper, options.edition()),
                    options.language());
            return new PatternPages(setter, chart, options, Checker.check(chart), Progress.NONE)
                    .strips().stream()
                            // Before the first heading there is but the cover.
                            .dropWhile(strip -> strip.anchors().isEmpty())
                            .flatMap(strip -> strip.pieces().stream())
                            .flatMap(piece -> piece.inks().stream())
                            .filter(PageItem.Art.class::isInstance)
                            .map(PageItem.Art.class::cast)
                            .filter(MarksReadBackTest::showsASquare)
                            .toList();
        }
    }

    /** A sheet of a poster may show no more than the end of a bracket, and the edges of squares that are on another. */
    private static boolean showsASquare(PageItem.Art art) {
        List<Mark> marks = art.drawing().get().marks();
        double right = art.fromXMm() + art.widthPt() / PageLayout.PT_PER_MM / art.scale() + 0.01;
        double bottom = art.fromYMm() + art.heightPt() / PageLayout.PT_PER_MM / art.scale() + 0.01;
        return marks.stream().anyMatch(mark -> mark.kind() == MarkKind.GRID_LINE)
                && marks.stream()
                        .filter(mark -> mark.kind().layer() == Layer.FABRIC)
                        .map(mark -> mark.shapes().get(0).bounds())
                        .anyMatch(square -> square.xMm() > art.fromXMm() - 0.01
                                && square.yMm() > art.fromYMm() - 0.01
                                && square.rightMm() < right
                                && square.bottomMm() < bottom);
    }

    /** The pictures of a file that are drawn on squared paper. */
    private static List<PaintedPage.Window> windows(byte[] file) throws IOException {
        List<PaintedPage.Window> charts = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            for (PDPage page : document.getPages()) {
                PaintedPage.windows(page).stream().filter(ChartOnPaper::isChart).forEach(charts::add);
            }
        }
        return charts;
    }

    static void assertProved(Chart chart, BookletOptions options) throws IOException {
        assertProved(chart, options, Published.fresh(chart, options));
    }

    /** Reads the marks of a published file back. */
    public static void assertProved(Chart chart, BookletOptions options, byte[] file) throws IOException {
        List<PageItem.Art> sheets = sheets(chart, options);
        List<PaintedPage.Window> windows = windows(file);
        assertThat(windows.size()).as("sheets").isEqualTo(sheets.size()).isPositive();
        PictureStyle style = (options.edition() == Edition.BLACK_AND_WHITE
                        ? EnglishStyle.BLACK_AND_WHITE
                        : EnglishStyle.PRINT)
                .withHand(options.hand())
                .withMarkStyle(options.appearance().marks());
        if (options.appearance().chartPaper() == ChartPaper.POSTER) {
            int corners = (int) sheets.stream()
                    .filter(sheet -> !isLevel(sheet.drawing().get()))
                    .count();
            assertPoster(chart, style, sheets.subList(0, corners), windows.subList(0, corners));
            assertPoster(chart, style, sheets.subList(corners, sheets.size()), windows.subList(corners, sheets.size()));
            return;
        }
        for (int i = 0; i < sheets.size(); i++) {
            Drawing drawing = sheets.get(i).drawing().get();
            assertThat(new MarksExpected(chart, drawing, style, isLevel(drawing))
                            .differences(ChartOnPaper.read(windows.get(i))))
                    .as("sheet %d of %d", i + 1, sheets.size())
                    .isEmpty();
        }
    }

    /** Each sheet shows what it must, and each sign can be read on one of them. */
    private static void assertPoster(
            Chart chart, PictureStyle style, List<PageItem.Art> sheets, List<PaintedPage.Window> windows) {
        if (sheets.isEmpty()) {
            return;
        }
        Drawing all = together(sheets);
        MarksExpected whole = new MarksExpected(chart, all, style, isLevel(all));
        List<ChartOnPaper> papers = windows.stream().map(ChartOnPaper::readPart).toList();
        for (int i = 0; i < sheets.size(); i++) {
            assertThat(whole.differencesInPart(papers.get(i), sheets.get(i)))
                    .as("sheet %d of %d", i + 1, sheets.size())
                    .isEmpty();
        }
        assertThat(whole.onNoSheet(papers, sheets)).as("on no sheet").isEmpty();
    }

    /** Whether a drawing shows one side from corner to corner; else it shows a corner. */
    private static boolean isLevel(Drawing drawing) {
        return drawing.title().endsWith("chart of one side");
    }

    /** The marks of all sheets, those that are on several once. */
    private static Drawing together(List<PageItem.Art> sheets) {
        Set<Mark> marks = new LinkedHashSet<>();
        sheets.forEach(sheet -> marks.addAll(sheet.drawing().get().marks()));
        Drawing any = sheets.get(0).drawing().get();
        return new Drawing(any.widthMm(), any.heightMm(), any.title(), any.description(), List.copyOf(marks));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyMarkOfASampleIsOnItsSheetOnce(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        assertProved(chart, BookletOptions.of(chart, English.LANGUAGE).withDraft(true));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void soItIsOnManySheetsThatOverlap(String sample) throws IOException {
        Chart chart = Published.sample(sample);
        assertProved(
                chart,
                BookletOptions.of(chart, English.LANGUAGE)
                        .withDraft(true)
                        .withPaper(Paper.LETTER)
                        .withCellMm(9));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyMarkOfAChartByChanceIsOnItsSheetOnce(long seed) throws IOException {
        RandomCharts charts = new RandomCharts(seed);
        Chart workable = charts.workable();
        assertProved(workable, BookletOptions.of(workable, English.LANGUAGE));
        Chart flawed = charts.small();
        assertProved(
                flawed,
                BookletOptions.of(flawed, English.LANGUAGE).withDraft(true).withCellMm(18));
        Chart ragged = charts.ragged();
        assertProved(ragged, BookletOptions.of(ragged, English.LANGUAGE).withDraft(true));
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void everyMarkOfAChartByChanceIsOnAPoster(long seed) throws IOException {
        Random random = new Random(seed);
        Chart workable = new RandomCharts(seed).workable();
        BookletOptions options = BookletOptions.of(workable, English.LANGUAGE).withCellMm(4 + random.nextInt(17));
        for (HookHand hand : HookHand.values()) {
            assertProved(
                    workable,
                    options.with(options.appearance().withChartPaper(ChartPaper.POSTER))
                            .with(options.telling().withHand(hand)));
        }
    }

    /** A chart on one sheet, with cells of {@link #CELL_MM}. */
    private static Drawing sheet(Chart chart) {
        PictureStyle style = EnglishStyle.PRINT.withLegend(false).withCellMm(CELL_MM);
        return CornerPicture.of(chart, style, Emphasis.NONE).drawing();
    }

    /** What is read off a page with these marks instead of those of the chart's sheet. */
    private static List<String> differencesOf(List<Mark> marks) throws IOException {
        Drawing sheet = sheet(CHART);
        Drawing changed = new Drawing(sheet.widthMm(), sheet.heightMm(), sheet.title(), sheet.description(), marks);
        return new MarksExpected(CHART, sheet, EnglishStyle.PRINT, false).differences(printed(changed));
    }

    /** A drawing alone on a page that is large enough, read back. */
    static ChartOnPaper printed(Drawing drawing) throws IOException {
        double width = drawing.widthMm() * PageLayout.PT_PER_MM;
        double height = drawing.heightMm() * PageLayout.PT_PER_MM;
        PageLayout paper = new PageLayout(width, height, 0, 0, width, height, 0, 15, 0, false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle((float) width, (float) height));
            document.addPage(page);
            try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                new PagePrinter(
                                stream,
                                paper,
                                new EmbeddedFonts(document),
                                Edition.STANDARD,
                                new MarkStamps(document),
                                Map.of())
                        .print(new PageItem.Art(0, 0, width, height, () -> drawing, 0, 0, 1));
            }
            document.save(out);
        }
        return ChartOnPaper.read(windows(out.toByteArray()).get(0));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everyMarkIsReadInBlackAndInAMirrorToo(String sample) throws IOException {
        assertDrawn(Published.sample(sample));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void everyMarkOfAChartByChanceIsReadInBlackAndInAMirrorToo(long seed) throws IOException {
        RandomCharts charts = new RandomCharts(seed);
        assertDrawn(charts.small());
        assertDrawn(charts.ragged());
    }

    private static void assertDrawn(Chart chart) throws IOException {
        for (PictureStyle style : List.of(
                EnglishStyle.BLACK_AND_WHITE,
                EnglishStyle.PRINT.withHand(HookHand.LEFT),
                EnglishStyle.BLACK_AND_WHITE.withHand(HookHand.LEFT))) {
            CornerPicture whole = CornerPicture.of(chart, style.withLegend(false), Emphasis.NONE);
            int columns = whole.layout().columns();
            int rows = whole.layout().rows();
            CornerPicture part = whole.tile(new CellRange(1, 1, Math.max(1, columns - 2), Math.max(1, rows - 2)));
            for (Drawing drawing : List.of(whole.drawing(), part.drawing())) {
                assertThat(new MarksExpected(chart, drawing, style, false).differences(printed(drawing)))
                        .as(style.toString())
                        .isEmpty();
            }
        }
    }

    /** What is read after one mark of this kind, the third, was replaced. */
    private static List<String> differencesWith(MarkKind kind, Function<Mark, List<Mark>> replacement)
            throws IOException {
        List<Mark> marks = new ArrayList<>(sheet(CHART).marks());
        Mark one = marks.stream()
                .filter(mark -> mark.kind() == kind)
                .skip(2)
                .findFirst()
                .orElseThrow();
        int at = marks.indexOf(one);
        marks.remove(at);
        marks.addAll(at, replacement.apply(one));
        return differencesOf(marks);
    }

    /** The mark of the same layer and square in the sheet of another chart. */
    private static List<Mark> asIn(Chart other, Mark mark) {
        return sheet(other).marks().stream()
                .filter(that -> that.cell().equals(mark.cell())
                        && that.kind().layer() == mark.kind().layer())
                .toList();
    }

    @Test
    void aSheetPrintedAsItIsHasNoDifferences() throws IOException {
        assertThat(differencesOf(sheet(CHART).marks())).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            names = {"BACK_LOOP", "LONG", "CORNER_CHAINS", "BASE_STITCH", "FABRIC_STITCH", "ROUND_NUMBER", "YARN_LETTER"
            })
    void aMarkThatIsLeftOutIsMissed(MarkKind kind) throws IOException {
        assertThat(differencesWith(kind, mark -> List.of()))
                .isNotEmpty()
                .allMatch(difference -> difference.startsWith("missing: ") || difference.contains(" is labelled "));
    }

    @ParameterizedTest
    @EnumSource(names = {"BACK_LOOP", "LONG", "CORNER_CHAINS", "BASE_STITCH", "FABRIC_STITCH"})
    void aMarkThatIsPrintedTwiceIsTooMany(MarkKind kind) throws IOException {
        assertThat(differencesWith(kind, mark -> List.of(mark, mark)))
                .isNotEmpty()
                .allMatch(difference -> difference.startsWith("too many: "));
    }

    @ParameterizedTest
    @EnumSource(names = {"BACK_LOOP", "LONG", "CORNER_CHAINS", "BASE_STITCH", "FABRIC_STITCH"})
    void aMarkInTheNextSquareIsMissedInItsOwn(MarkKind kind) throws IOException {
        assertThat(differencesWith(kind, mark -> List.of(MovedMarks.toTheRight(mark, CELL_MM))))
                .anyMatch(difference -> difference.startsWith("missing: "))
                .anyMatch(difference -> difference.startsWith("too many: "));
    }

    @Test
    void aMarkATenthOfASquareFromItsPlaceIsNotRead() throws IOException {
        assertThat(differencesWith(MarkKind.BACK_LOOP, mark -> List.of(MovedMarks.toTheRight(mark, CELL_MM / 10))))
                .anyMatch(difference -> difference.startsWith("missing: "));
    }

    @ParameterizedTest
    @EnumSource(Stitch.class)
    void aMarkOfAnotherKindIsNotTakenForTheRightOne(Stitch stitch) throws IOException {
        MarkKind right = stitch == Stitch.BACK_LOOP ? MarkKind.LONG : MarkKind.BACK_LOOP;
        assertThat(differencesWith(
                        right,
                        mark -> asIn(
                                Edits.setStitches(CHART, List.of(mark.place().get()), stitch), mark)))
                .anyMatch(difference -> difference.startsWith("missing: Seen[sign=" + right))
                .anyMatch(difference -> difference.startsWith("too many: Seen[sign=" + MarkKind.of(stitch)));
    }

    @ParameterizedTest
    @EnumSource(names = {"LONG", "FABRIC_STITCH", "FABRIC_CORNER"})
    void aMarkInAnotherYarnIsNotTakenForTheRightOne(MarkKind kind) throws IOException {
        Yarn rust = new Yarn("A", "Rust", Colour.parse("#a9502f"));
        Yarn mud = new Yarn("B", "Mud", Colour.parse("#3f3d46"));
        Chart other = CHART.withYarns(List.of(rust, mud));
        assertThat(differencesWith(kind, mark -> asIn(other, mark)))
                .anyMatch(difference -> difference.startsWith("missing: "))
                .anyMatch(difference -> difference.startsWith("too many: "));
    }

    @Test
    void aMarkUnderALaterSquareIsHidden() throws IOException {
        List<Mark> marks = new ArrayList<>(sheet(CHART).marks());
        List<Mark> fabric = marks.stream()
                .filter(mark -> mark.kind() == MarkKind.FABRIC_STITCH)
                .toList();
        marks.remove(fabric.get(5));
        marks.add(fabric.get(5));
        assertThat(differencesOf(marks)).singleElement().asString().startsWith("a square is filled over");
    }
}
