package edgewright.booklet.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import edgewright.booklet.PatternPages;
import edgewright.booklet.Published;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.ColumnSlice.Break;
import edgewright.booklet.page.Paginator.Placed;
import edgewright.booklet.press.EmbeddedFonts;
import edgewright.booklet.sheets.MarksReadBackTest;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.check.Checker;
import edgewright.texts.English;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** How the pages of whole patterns end: common practice of setting books, no source. */
class PageEndsTest {
    /** A page that is filled less than this looks forgotten, unless a part ends on it. */
    private static final double FORGOTTEN = 0.2;

    /** What hangs together is parted rather than that a page would be filled less than this. */
    private static final double HALF = 0.5;

    /** A line may end with a blank, which stands beyond the column. */
    private static final double PLAY_PT = 9;

    private static Stream<Arguments> patterns() throws IOException {
        List<Arguments> patterns = new ArrayList<>();
        for (String sample : MarksReadBackTest.samples().toList()) {
            BookletOptions plain = BookletOptions.of(Published.sample(sample), English.LANGUAGE)
                    .withDraft(true);
            for (Edition edition : Edition.values()) {
                Paper paper = patterns.size() % 2 == 0 ? Paper.A4 : Paper.LETTER;
                patterns.add(arguments(
                        Published.sample(sample),
                        plain.with(plain.appearance().withEdition(edition).withPaper(paper))));
            }
            patterns.add(arguments(
                    Published.sample(sample),
                    plain.with(plain.telling().withTerms(PrintedTerms.BOTH).withHand(HookHand.LEFT))));
        }
        Chart yarns = manyYarns();
        for (Edition edition : Edition.values()) {
            BookletOptions plain = BookletOptions.of(yarns, English.LANGUAGE);
            patterns.add(arguments(yarns, plain.with(plain.appearance().withEdition(edition))));
            patterns.add(arguments(
                    yarns, plain.with(plain.appearance().withEdition(edition)).withRepeats(PerSide.pairs(9, 7))));
        }
        return patterns.stream();
    }

    /** A long title, sixty rounds and as many yarns as a chart may have. */
    private static Chart manyYarns() {
        List<Yarn> yarns = IntStream.rangeClosed(1, Chart.MOST_YARNS)
                .mapToObj(i -> new Yarn("Y" + i, "Yarn of the long marsh number " + i, new Colour(i * 0x030201)))
                .toList();
        return Chart.blank(
                "The Very Long Border of All the Creeks, Pools and Channels between the Lantern Posts and the Sea",
                new SideShape(3, 12, 4),
                64,
                yarns);
    }

    private static PageLayout sheet(BookletOptions options) {
        return PageLayout.of(options.paper(), options.edition());
    }

    private static List<List<Placed>> pages(Chart chart, BookletOptions options) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PageLayout sheet = sheet(options);
            TextSetter setter = new TextSetter(
                    sheet,
                    TextStyles.of(new EmbeddedFonts(document).typefaces(), sheet),
                    new YarnChips(chart, sheet, options.edition()),
                    options.language());
            return new Paginator(sheet.heightPt())
                    .pages(new PatternPages(setter, chart, options, Checker.check(chart), Progress.NONE).strips());
        }
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void pagesEndWhereABookDesignerWouldEndThemAndNothingStandsBesideTheColumn(Chart chart, BookletOptions options)
            throws IOException {
        List<List<Placed>> pages = pages(chart, options);
        PageLayout sheet = sheet(options);
        List<String> faults = new ArrayList<>(faults(pages, sheet.heightPt()));
        for (List<Placed> page : pages) {
            for (Placed placed : page) {
                PageLayout on = placed.strip().sheet().orElse(sheet);
                placed.strip().pieces().stream()
                        .flatMap(piece -> piece.inks().stream())
                        .filter(ink -> ink instanceof PageItem.Words words && isBeside(words, placed.topPt(), on))
                        .forEach(ink -> faults.add(ink.toString()));
            }
        }
        assertThat(faults).isEmpty();
    }

    private static boolean isBeside(PageItem.Words words, double topPt, PageLayout sheet) {
        return words.xPt() < -PLAY_PT
                || words.xPt() + words.widthPt() > sheet.widthPt() + PLAY_PT
                || topPt + words.baselinePt() < 0
                || topPt + words.baselinePt() > sheet.heightPt();
    }

    /** What is wrong with the ends of pages of that height. */
    private static List<String> faults(List<List<Placed>> pages, double heightPt) {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < pages.size() - 1; i++) {
            List<Placed> page = pages.get(i);
            ColumnSlice last = page.get(page.size() - 1).strip();
            ColumnSlice next = firstOf(pages.get(i + 1));
            if (next.newPage() || !next.sheet().equals(last.sheet())) {
                continue;
            }
            double room = last.sheet().map(PageLayout::heightPt).orElse(heightPt);
            double hangingPt = hanging(page, pages.get(i + 1));
            if (last.below() == Break.NEVER) {
                faults.add("page " + (i + 1) + " ends within what is never parted");
            }
            boolean halfWithout = filledPt(page) - hangingAbovePt(page) >= HALF * room;
            if (last.below() == Break.UNWELCOME && hangingPt <= room && halfWithout) {
                faults.add("page " + (i + 1) + " parts what would fit on a page");
            }
            if (filledPt(page) < FORGOTTEN * room && filledPt(page) + hangingPt <= room) {
                faults.add("page " + (i + 1) + " is almost empty");
            }
        }
        return faults;
    }

    private static ColumnSlice firstOf(List<Placed> page) {
        return page.stream()
                .map(Placed::strip)
                .filter(strip -> !isHeadAgain(strip))
                .findFirst()
                .orElseThrow();
    }

    /** Whether it is the head of a table once more, which a reader does not hear. */
    private static boolean isHeadAgain(ColumnSlice strip) {
        return !strip.pieces().isEmpty()
                && strip.pieces().stream().allMatch(piece -> piece.tag().isEmpty());
    }

    private static double filledPt(List<Placed> page) {
        Placed last = page.get(page.size() - 1);
        return last.topPt() + last.strip().heightPt();
    }

    /** How high what hangs together across the end of a page is, as far as these two pages show it. */
    private static double hanging(List<Placed> page, List<Placed> next) {
        double height = hangingAbovePt(page);
        for (Placed placed : next) {
            if (isHeadAgain(placed.strip())) {
                continue;
            }
            height += placed.strip().heightPt() + placed.strip().spaceAbovePt();
            if (placed.strip().below() == Break.FREE) {
                break;
            }
        }
        return height;
    }

    /** The part of that on the page itself. */
    private static double hangingAbovePt(List<Placed> page) {
        double height = 0;
        for (int i = page.size() - 1; i >= 0; i--) {
            if (i < page.size() - 1 && page.get(i).strip().below() == Break.FREE) {
                break;
            }
            height += page.get(i).strip().heightPt() + page.get(i).strip().spaceAbovePt();
        }
        return height;
    }

    private static Placed placed(double topPt, double heightPt, Break below) {
        return new Placed(ColumnSlice.of(heightPt, List.of()).breaking(below), topPt);
    }

    @Test
    void aHeadingAtTheFootAndAPageThatIsAlmostEmptyWouldBeFound() {
        List<Placed> next = List.of(placed(0, 30, Break.FREE));
        assertThat(faults(List.of(List.of(placed(0, 80, Break.FREE), placed(80, 10, Break.NEVER)), next), 100))
                .containsExactly("page 1 ends within what is never parted");
        assertThat(faults(List.of(List.of(placed(0, 55, Break.FREE), placed(55, 20, Break.UNWELCOME)), next), 100))
                .containsExactly("page 1 parts what would fit on a page");
        assertThat(faults(List.of(List.of(placed(0, 15, Break.FREE)), next), 100))
                .containsExactly("page 1 is almost empty");
        assertThat(faults(List.of(List.of(placed(0, 80, Break.UNWELCOME)), next), 100))
                .isEmpty();
    }
}
