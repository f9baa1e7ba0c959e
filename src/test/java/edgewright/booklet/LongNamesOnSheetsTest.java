package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.chart.SideShape;
import edgewright.testing.LongNames;
import edgewright.testing.RandomCharts;
import edgewright.texts.English;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Names, titles and ids of any length where the chart takes many sheets: the legend then stands beside an overview of them. */
class LongNamesOnSheetsTest {
    private static final int[] LETTERS = {1, 3, 40, 100, 101, 160, 220, 300};

    static Stream<Arguments> everyWayToPrintAChart() {
        Random random = new Random(30);
        return Stream.of(Edition.values())
                .flatMap(edition -> Stream.of(Paper.values())
                        .flatMap(paper -> Stream.of(ChartPaper.values())
                                .map(sheets -> Arguments.of(
                                        edition,
                                        paper,
                                        sheets,
                                        LETTERS[random.nextInt(LETTERS.length)],
                                        random.nextBoolean(),
                                        1 + random.nextInt(8)))));
    }

    @ParameterizedTest
    @MethodSource("everyWayToPrintAChart")
    void aChartOfManySheetsIsPublishedAndNothingStandsOutOfItsPages(
            Edition edition, Paper paper, ChartPaper sheets, int letters, boolean blanks, int idLetters)
            throws IOException {
        Chart plain = RandomCharts.workable(new RandomCharts(letters).chart(new SideShape(3, 9, 4), 22));
        Chart chart = LongNames.withWideIds(LongNames.in(plain, letters, blanks), idLetters);
        BookletOptions options =
                BookletOptions.of(chart, English.LANGUAGE).withEdition(edition).withPaper(paper);
        options = options.with(options.appearance().withChartPaper(sheets).withCellMm(10));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        assertThat(Booklet.publish(chart, options, bytes, Progress.NONE)).isInstanceOf(PublishOutcome.Published.class);
        // The sheets of a poster are windows on one picture: a label may begin in one and end in the next, cut off at
        // the
        // edge. That each mark stands whole on some sheet is proved by MarksReadBackTest.
        if (sheets != ChartPaper.POSTER) {
            try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
                OffThePage.assertNothing(document);
            }
        }
    }
}
