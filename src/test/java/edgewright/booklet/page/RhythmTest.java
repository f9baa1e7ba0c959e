package edgewright.booklet.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import edgewright.booklet.Published;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.page.ColumnSlice.Piece;
import edgewright.booklet.page.Paginator.Placed;
import edgewright.booklet.press.EmbeddedFonts;
import edgewright.booklet.sheets.MarksReadBackTest;
import edgewright.chart.Chart;
import edgewright.texts.English;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * All lines that are read, whatever their size, stand on one grid of half lines, so that lines of facing pages are level;
 * columns side by side, which are set smaller, share a grid of their own. No heading or label ends a page, and no line of a paragraph stands alone on one. Common practice of
 * setting books, no source.
 */
class RhythmTest {
    private static final Chart CHART = Published.sample("reed-bank");

    /** Points are rounded when they are added up. */
    private static final double HAIR_PT = 0.02;

    private static Stream<Arguments> patterns() throws IOException {
        List<Arguments> patterns = new ArrayList<>();
        for (String sample : MarksReadBackTest.samples().toList()) {
            for (Edition edition : Edition.values()) {
                patterns.add(arguments(sample, edition));
            }
        }
        return patterns.stream();
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void everyLineStandsOnTheGridAndNoneIsLeftAlone(String sample, Edition edition) throws IOException {
        Chart chart = Published.sample(sample);
        BookletOptions options =
                BookletOptions.of(chart, English.LANGUAGE).withEdition(edition).withDraft(true);
        SetPages set = SetPages.of(chart, options);
        assertThat(offTheGrid(set.pages(), set.sheet())).isEmpty();
        assertThat(set.boldAtTheFoot()).isEmpty();
        assertThat(set.lonelyLines()).isEmpty();
        assertThat(set.roundsAlone()).isEmpty();
    }

    /** Lines that stand on no grid that begins with a first line of running text. Numbers on a picture are not read. */
    private static List<String> offTheGrid(List<List<Placed>> pages, PageLayout usual) {
        List<String> off = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            for (Placed placed : pages.get(page)) {
                PageLayout sheet = placed.strip().sheet().orElse(usual);
                boolean pair = holdsAPair(placed.strip(), sheet);
                PageLayout grid = pair ? sheet.half() : sheet;
                double above = pair ? 0 : placed.topPt();
                double first = (grid.linePt() + FaceMetrics.CAP_HEIGHT * grid.textSizePt()) / 2;
                for (Piece piece : placed.strip().pieces()) {
                    for (PageItem ink : piece.inks()) {
                        if (piece.tag().isPresent() && ink instanceof PageItem.Words words) {
                            double steps = (above + words.baselinePt() - first) / grid.halfLinePt();
                            double offPt = (steps - Math.rint(steps)) * grid.halfLinePt();
                            if (Math.abs(offPt) > HAIR_PT) {
                                off.add(String.format(
                                        Locale.ROOT, "page %d: '%s' by %.2f pt", page + 1, words.text(), offPt));
                            }
                        }
                    }
                }
            }
        }
        return off;
    }

    /** Whether a strip is two columns side by side: a heading of a part begins in the right half of the page. */
    private static boolean holdsAPair(ColumnSlice strip, PageLayout sheet) {
        double right = sheet.widthPt() - sheet.half().widthPt();
        return strip.pieces().stream()
                .filter(piece -> piece.tag()
                        .filter(tag -> tag.role() == StructureRole.H2)
                        .isPresent())
                .flatMap(piece -> piece.inks().stream())
                .anyMatch(ink -> ink instanceof PageItem.Words words && Math.abs(words.xPt() - right) < HAIR_PT);
    }

    @Test
    void aLabelAtTheFootAndALonelyLineWouldBeFound() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PageLayout sheet = PageLayout.of(Paper.A4, Edition.STANDARD);
            TextStyles styles = TextStyles.of(new EmbeddedFonts(document).typefaces(), sheet);
            TextSetter setter =
                    new TextSetter(sheet, styles, new YarnChips(CHART, sheet, Edition.STANDARD), English.LANGUAGE);
            List<ColumnSlice> text = setter.paragraph(Tag.document(), "reeds ".repeat(40), styles.text(), 0, 200);
            List<ColumnSlice> label = setter.paragraph(Tag.document(), "Done", styles.smallStrong(), 0, 200);
            List<Placed> first = List.of(new Placed(text.get(0), 0), new Placed(label.get(0), sheet.linePt()));
            List<Placed> second = new ArrayList<>();
            text.subList(1, text.size()).forEach(line -> second.add(new Placed(line, sheet.linePt() * second.size())));
            SetPages set = new SetPages(List.of(first, second), sheet, styles);
            assertThat(set.boldAtTheFoot()).containsExactly("page 1 ends with 'Done'");
            assertThat(set.lonelyLines()).hasSize(1).allMatch(found -> found.startsWith("page 1 parts 'reeds reeds"));
        }
    }

    @Test
    void aLineBesideTheGridWouldBeFound() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PageLayout sheet = PageLayout.of(Paper.A4, Edition.STANDARD);
            TextStyles styles = TextStyles.of(new EmbeddedFonts(document).typefaces(), sheet);
            PageItem on = new PageItem.Words(
                    0, styles.text().baselinePt(), "level", styles.text().face(), 10.5, PageColour.INK);
            Piece level = Piece.of(Tag.document(), on);
            Piece low = Piece.of(
                    Tag.document(),
                    new PageItem.Words(
                            0,
                            styles.text().baselinePt() + 0.5,
                            "low",
                            styles.text().face(),
                            9,
                            PageColour.INK));
            List<Placed> page = List.of(
                    new Placed(ColumnSlice.of(13, List.of(level, low)), 0),
                    new Placed(ColumnSlice.of(13, List.of(level)), 6.5),
                    new Placed(ColumnSlice.of(13, List.of(level)), 8));
            assertThat(offTheGrid(List.of(page), sheet))
                    .containsExactly("page 1: 'low' by 0.50 pt", "page 1: 'level' by 1.50 pt");
        }
    }
}
