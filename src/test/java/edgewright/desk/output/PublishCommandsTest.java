package edgewright.desk.output;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Chart;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Publishing from the desk, stopped before it is through. */
class PublishCommandsTest {
    @TempDir
    private Path folder;

    private final AtomicReference<String> outcome = new AtomicReference<>();
    private final List<Path> made = new ArrayList<>();
    private final CountDownLatch over = new CountDownLatch(1);

    @Test
    void aPatternThatIsStoppedLeavesNoHalfWrittenFileAndKeepsTheOlderOne() throws Exception {
        Chart chart = ((ReadResult.Read) ChartFiles.read(Path.of("sample-charts/reed-bank.border.json"))).chart();
        Path file = folder.resolve("pattern.pdf");
        Files.writeString(file, "an older pattern");
        SwingUtilities.invokeAndWait(() ->
                publishing(chart).publish(chart, BookletOptions.of(chart, English.LANGUAGE), file, Optional.empty()));
        assertThat(over.await(60, TimeUnit.SECONDS)).isTrue();
        assertThat(outcome.get()).isEqualTo("Cancelled; nothing was written.");
        assertThat(file).hasContent("an older pattern");
        assertThat(made).isEmpty();
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    /** Its board says stop as soon as a job has begun. */
    private PublishCommands publishing(Chart chart) {
        Jobs jobs = new Jobs(
                new Jobs.Board() {
                    @Override
                    public void begin(String job, Optional<Runnable> stop) {
                        stop.orElseThrow().run();
                    }

                    @Override
                    public void progress(int percent) {}

                    @Override
                    public void end(String said) {
                        outcome.set(said);
                        over.countDown();
                    }
                },
                English.LANGUAGE);
        return new PublishCommands(
                null,
                new Workbench(chart, Optional.empty(), English.LANGUAGE),
                new Questions(null, English.LANGUAGE),
                jobs,
                new ChartView(English.LANGUAGE),
                new Settings(folder.resolve("no-settings")),
                made::add);
    }
}
