package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.HookSize;
import edgewright.texts.English;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A pattern whose words do not make its chart is not printed, unless a draft is asked for. */
class ProvedBeforePrintTest {
    /** A hook thicker than any that the reader of words takes. */
    private static final HookSize UNREADABLE = new HookSize(2 * HookSize.MOST_HUNDREDTHS_MM);

    @Test
    void wordsThatDoNotMakeTheChartAreNotPublished() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Chart chart = unreadable();
        PublishOutcome outcome = Booklet.publish(chart, BookletOptions.of(chart, English.LANGUAGE), out, Progress.NONE);
        assertThat(outcome).isInstanceOf(PublishOutcome.NotProved.class);
        assertThat(((PublishOutcome.NotProved) outcome).problems())
                .isNotEmpty()
                .allMatch(said -> said.contains("hook"));
        assertThat(out.size()).isZero();
    }

    @Test
    void aDraftOfThemIsPublishedAndSaysSo() throws IOException {
        Chart chart = unreadable();
        try (ReadBack read = new ReadBack(Published.fresh(
                chart, BookletOptions.of(chart, English.LANGUAGE).withDraft(true)))) {
            assertThat(read.aloud()).contains("do not make the chart");
        }
    }

    private static Chart unreadable() {
        Chart sample = Published.sample("reed-bank");
        return sample.withMaking(sample.making().withBack(Optional.of(new Back(Optional.of(UNREADABLE)))));
    }
}
