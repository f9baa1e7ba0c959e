package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.testing.LongNames;
import edgewright.texts.English;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of any length in printed patterns. */
class LongNamesInPatternTest {

    @ParameterizedTest
    @CsvSource({
        "STANDARD, 1",
        "STANDARD, 60",
        "STANDARD, 100",
        "STANDARD, 300",
        "LARGE_PRINT, 60",
        "LARGE_PRINT, 300",
        "BLACK_AND_WHITE, 100",
        "BLACK_AND_WHITE, 300"
    })
    void everyEditionIsPublishedAndNothingStandsOutOfItsPages(Edition edition, int letters) throws IOException {
        for (boolean blanks : new boolean[] {false, true}) {
            Chart chart = LongNames.chart(letters, blanks);
            for (double cellMm : new double[] {0, 12}) {
                BookletOptions options =
                        BookletOptions.of(chart, English.LANGUAGE).withEdition(edition);
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                PublishOutcome outcome = Booklet.publish(
                        chart, cellMm == 0 ? options : options.withCellMm(cellMm), bytes, Progress.NONE);
                assertThat(outcome).isInstanceOf(PublishOutcome.Published.class);
                try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
                    OffThePage.assertNothing(document);
                }
            }
        }
    }
}
