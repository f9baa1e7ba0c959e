package edgewright.booklet.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import edgewright.booklet.Published;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.page.Paginator.Placed;
import edgewright.booklet.sheets.MarksReadBackTest;
import edgewright.chart.Chart;
import edgewright.texts.English;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** How full the pages of whole patterns are. A buyer who prints them pays for white paper: the limits are our own. */
class PageFillTest {
    private static final double HALF = 0.5;

    /** A picture that is higher than this part of a page has the page for itself. */
    private static final double FULL_PAGE = 0.5;

    private static Stream<Arguments> patterns() throws IOException {
        List<Arguments> patterns = new ArrayList<>();
        for (String sample : MarksReadBackTest.samples().toList()) {
            BookletOptions plain = BookletOptions.of(Published.sample(sample), English.LANGUAGE)
                    .withDraft(true);
            for (Edition edition : Edition.values()) {
                Paper paper = patterns.size() % 2 == 0 ? Paper.A4 : Paper.LETTER;
                BookletOptions in = plain.withEdition(edition).withPaper(paper);
                patterns.add(arguments(sample, in));
                patterns.add(arguments(sample, in.withParts(BookletParts.WORKBOOK)));
            }
            patterns.add(arguments(sample, plain.with(plain.telling().withTerms(PrintedTerms.BOTH))));
            patterns.add(arguments(sample, plain.with(plain.appearance().withChartPaper(ChartPaper.POSTER))));
        }
        return patterns.stream();
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void noPageIsUnderHalfFullButTheLastAndOneBeforeAChartThatFillsAPage(String sample, BookletOptions options)
            throws IOException {
        SetPages set = SetPages.of(Published.sample(sample), options);
        assertThat(underHalf(set.pages(), set.sheet())).isEmpty();
        assertThat(headingsAlone(set.pages())).isEmpty();
    }

    @ParameterizedTest
    // Lantern Posts has 27 rounds on two pages of chart; the others about 20.
    @CsvSource({"reed-bank, 10", "tide-steps, 10", "sluice-gate, 10", "lantern-posts, 11"})
    void aPatternIsCompact(String sample, int most) throws IOException {
        Chart chart = Published.sample(sample);
        assertThat(SetPages.of(chart, BookletOptions.of(chart, English.LANGUAGE))
                        .pages())
                .hasSizeLessThanOrEqualTo(most);
    }

    /** How a round is joined stands before the chart there, and fills the page with what is said of the chart. */
    @ParameterizedTest
    @CsvSource({"reed-bank, A4", "reed-bank, LETTER", "tide-steps, A4", "tide-steps, LETTER"})
    void thePageBeforeTheChartIsHalfFullWhereThereIsSomethingToFillItWith(String sample, Paper paper)
            throws IOException {
        Chart chart = Published.sample(sample);
        SetPages set =
                SetPages.of(chart, BookletOptions.of(chart, English.LANGUAGE).withPaper(paper));
        assertThat(set.pages().subList(0, set.pages().size() - 1))
                .allSatisfy(page -> assertThat(filled(page, set.sheet())).isGreaterThan(HALF));
    }

    /** How much of a page is filled, from 0 to 1. */
    static double filled(List<Placed> page, PageLayout usual) {
        Placed last = page.get(page.size() - 1);
        PageLayout sheet = last.strip().sheet().orElse(usual);
        return (last.topPt() + last.strip().heightPt()) / sheet.heightPt();
    }

    private static List<String> underHalf(List<List<Placed>> pages, PageLayout sheet) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < pages.size() - 1; i++) {
            double filled = filled(pages.get(i), sheet);
            if (filled < HALF && !beginsWithAFullPage(pages.get(i + 1), sheet)) {
                found.add(String.format(Locale.ROOT, "page %d of %d: %.2f", i + 1, pages.size(), filled));
            }
        }
        return found;
    }

    private static boolean beginsWithAFullPage(List<Placed> page, PageLayout usual) {
        double height = page.get(0).strip().sheet().orElse(usual).heightPt();
        return page.get(0).strip().newPage()
                && page.stream()
                        .flatMap(placed -> placed.strip().pieces().stream())
                        .flatMap(piece -> piece.inks().stream())
                        .anyMatch(ink -> ink instanceof PageItem.Art art && art.heightPt() > FULL_PAGE * height);
    }

    /** Pages on which there is nothing but headings and the ways to other pages. */
    private static List<String> headingsAlone(List<List<Placed>> pages) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            boolean alone = pages.get(i).stream()
                    .flatMap(placed -> placed.strip().pieces().stream())
                    .flatMap(piece -> piece.tag().stream())
                    .allMatch(tag -> tag.role() == StructureRole.H2
                            || tag.role() == StructureRole.H3
                            || (tag.role() == StructureRole.LINK
                                    && tag.parent().orElseThrow().role() != StructureRole.CONTENTS_ITEM));
            if (alone) {
                found.add("page " + (i + 1));
            }
        }
        return found;
    }

    @Test
    void aPageThatIsAlmostEmptyAndAHeadingAloneWouldBeFound() {
        PageLayout sheet = PageLayout.of(Paper.A4, Edition.STANDARD);
        Tag heading = Tag.document().child(StructureRole.H2);
        ColumnSlice alone = ColumnSlice.of(
                30, List.of(ColumnSlice.Piece.of(heading, PageItem.Box.filled(0, 0, 1, 1, PageColour.INK))));
        List<List<Placed>> pages =
                List.of(List.of(new Placed(alone, 0)), List.of(new Placed(alone, sheet.heightPt() - 30)));
        assertThat(underHalf(pages, sheet)).containsExactly("page 1 of 2: 0.04");
        assertThat(headingsAlone(pages)).containsExactly("page 1", "page 2");
    }
}
