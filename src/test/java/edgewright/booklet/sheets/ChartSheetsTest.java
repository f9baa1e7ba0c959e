package edgewright.booklet.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.PaintedPage;
import edgewright.booklet.Published;
import edgewright.booklet.ReadBack;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.page.ColumnSlice;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.Tag;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyles;
import edgewright.booklet.page.YarnChips;
import edgewright.booklet.press.EmbeddedFonts;
import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.texts.English;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The chart on its sheets: nothing is lost between them, and nothing on the way to the paper. */
class ChartSheetsTest {
    /** A stitch of the chart in its cell of the squared paper. */
    private record Worked(MarkKind kind, Optional<GridCell> cell, Optional<String> yarn) {
        static Worked of(Mark mark) {
            return new Worked(mark.kind(), mark.cell(), mark.yarn());
        }
    }

    private static List<ColumnSlice> strips(PDDocument document, Chart chart, BookletOptions options) {
        PageLayout sheet = PageLayout.of(options.paper(), options.edition());
        TextSetter setter = new TextSetter(
                sheet,
                TextStyles.of(new EmbeddedFonts(document).typefaces(), sheet),
                new YarnChips(chart, sheet, options.edition()),
                options.language());
        return new ChartSheets(setter, chart, options, Emphasis.NONE)
                .set(Tag.document(), new ChartLinks(setter), sheet.heightPt());
    }

    private static List<PageItem.Art> pictures(List<ColumnSlice> strips) {
        return strips.stream()
                .flatMap(strip -> strip.pieces().stream())
                .flatMap(piece -> piece.inks().stream())
                .filter(PageItem.Art.class::isInstance)
                .map(PageItem.Art.class::cast)
                .toList();
    }

    private static Set<Worked> stitches(Drawing drawing) {
        Set<Worked> stitches = new HashSet<>();
        for (Mark mark : drawing.marks()) {
            if (mark.kind().layer() == Layer.MARKS && mark.cell().isPresent()) {
                stitches.add(Worked.of(mark));
            }
        }
        return stitches;
    }

    @ParameterizedTest
    @CsvSource({
        "tide-steps, A4, 0, STANDARD, SAME, RIGHT",
        "lantern-posts, A4, 0, STANDARD, SAME, RIGHT",
        "lantern-posts, LETTER, 4, STANDARD, SAME, LEFT",
        "lantern-posts, A4, 8, BLACK_AND_WHITE, SAME, LEFT",
        "mooring-rope, A4, 15, STANDARD, SAME, RIGHT",
        "heron-walk, LETTER, 0, STANDARD, SAME, RIGHT",
        "reed-bank, A4, 0, LARGE_PRINT, SAME, LEFT",
        "reed-bank, LETTER, 15, LARGE_PRINT, A3, RIGHT",
        "lantern-posts, A4, 0, BLACK_AND_WHITE, A3, RIGHT",
        "lantern-posts, A4, 0, STANDARD, POSTER, LEFT",
        "mooring-rope, LETTER, 16, LARGE_PRINT, POSTER, RIGHT",
    })
    void everyStitchMarkOfTheChartIsOnASheet(
            String sample, Paper paper, double cellMm, Edition edition, ChartPaper chartPaper, HookHand hand)
            throws IOException {
        Chart chart = Published.sample(sample);
        BookletOptions options = BookletOptions.of(chart, English.LANGUAGE)
                .withPaper(paper)
                .withEdition(edition)
                .withHand(hand);
        options = options.with(options.appearance().withChartPaper(chartPaper));
        if (cellMm > 0) {
            options = options.withCellMm(cellMm);
        }
        PictureStyle style = EnglishStyle.PRINT
                .withLegend(false)
                .withMarkStyle(options.appearance().marks());
        Drawing whole = CornerPicture.of(chart, style, Emphasis.NONE).drawing();
        try (PDDocument document = new PDDocument()) {
            Set<Worked> printed = new HashSet<>();
            for (PageItem.Art picture : pictures(strips(document, chart, options))) {
                printed.addAll(stitches(picture.drawing().get()));
            }
            assertThat(printed).isEqualTo(stitches(whole)).isNotEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"lantern-posts, A4, 4", "lantern-posts, LETTER, 9", "first-try-unfinished, A4, 6.5"})
    void aSheetIsShownWholeAndLiesOnItsPage(String sample, Paper paper, double cellMm) throws IOException {
        Chart chart = Published.sample(sample);
        BookletOptions options =
                BookletOptions.of(chart, English.LANGUAGE).withPaper(paper).withCellMm(cellMm);
        PageLayout sheet = PageLayout.of(paper, Edition.STANDARD);
        try (PDDocument document = new PDDocument()) {
            List<ColumnSlice> strips = strips(document, chart, options);
            for (ColumnSlice strip : strips) {
                assertThat(strip.heightPt()).isLessThanOrEqualTo(sheet.heightPt());
            }
            List<PageItem.Art> sheets = pictures(strips).stream()
                    .filter(art -> art.scale() == 1)
                    .filter(art -> !stitches(art.drawing().get()).isEmpty())
                    .toList();
            assertThat(sheets).hasSizeGreaterThan(1);
            for (PageItem.Art art : sheets) {
                Drawing drawing = art.drawing().get();
                assertThat(art.fromXMm()).isZero();
                assertThat(art.fromYMm()).isZero();
                assertThat(art.widthPt()).isEqualTo(drawing.widthMm() * PageLayout.PT_PER_MM);
                assertThat(art.heightPt()).isEqualTo(drawing.heightMm() * PageLayout.PT_PER_MM);
                assertThat(sheet.leftPt() + art.xPt()).isGreaterThanOrEqualTo(12 * PageLayout.PT_PER_MM - 0.01);
                assertThat(sheet.leftPt() + art.xPt() + art.widthPt())
                        .isLessThanOrEqualTo(sheet.pageWidthPt() - 12 * PageLayout.PT_PER_MM + 0.01);
            }
        }
    }

    /** Counts what a driver is asked to draw. */
    private static final class Counter implements Surface {
        private int fills;
        private int lines;
        private int texts;

        @Override
        public void fill(Shape.Fill fill) {
            fills++;
        }

        @Override
        public void line(Shape.Line line) {
            lines++;
        }

        @Override
        public void text(Shape.Text text) {
            texts++;
        }

        String counts() {
            return fills + " fills, " + lines + " lines, " + texts + " texts";
        }
    }

    /** Counts what is painted through a window; squares of one colour may be filled together. */
    private static String counts(PaintedPage.Window window) {
        int fills = 0;
        int lines = 0;
        int texts = 0;
        for (PaintedPage.Painted painted : window.painted()) {
            if (painted instanceof PaintedPage.Lettered) {
                texts++;
            } else if (((PaintedPage.Path) painted).filled()) {
                fills += ((PaintedPage.Path) painted).parts().size();
            } else {
                lines++;
            }
        }
        return fills + " fills, " + lines + " lines, " + texts + " texts";
    }

    @Test
    void everyShapeOfEveryMarkIsPrintedOnce() throws IOException {
        Chart chart = Published.sample("lantern-posts");
        BookletOptions options = BookletOptions.of(chart, English.LANGUAGE);
        List<String> drawn = new ArrayList<>();
        try (PDDocument document = new PDDocument()) {
            for (PageItem.Art picture : pictures(strips(document, chart, options))) {
                Counter counter = new Counter();
                picture.drawing().get().drawOn(counter);
                drawn.add(counter.counts());
            }
        }
        List<String> printed = new ArrayList<>();
        try (ReadBack read = Published.read(chart, options)) {
            for (PDPage page : read.document().getPages()) {
                PaintedPage.windows(page).forEach(window -> printed.add(counts(window)));
            }
        }
        // The last pictures of the chart are its sheets, one after another.
        List<String> sheets = drawn.subList(2, drawn.size());
        assertThat(sheets).hasSizeGreaterThan(1);
        assertThat(printed).containsSubsequence(sheets);
    }
}
