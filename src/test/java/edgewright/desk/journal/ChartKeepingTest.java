package edgewright.desk.journal;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.desk.Desk;
import edgewright.desk.work.Workbench;
import edgewright.file.Fingerprint;
import edgewright.file.JournalEntry;
import edgewright.file.JournalFolder;
import edgewright.file.JournalFolder.Lost;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which work on a chart is kept, and how much of it. */
class ChartKeepingTest {
    private static final Instant NOW = Instant.parse("2026-03-14T09:26:53Z");
    private static final Place FIRST = new Place(3, Section.REPEAT, 1);
    private static final Place SECOND = new Place(3, Section.REPEAT, 3);

    @TempDir
    private Path folder;

    private final Chart blank = Desk.blank(English.LANGUAGE);
    private final Optional<Fingerprint> seen = Optional.of(new Fingerprint("00"));
    private Path file;
    private Workbench bench;
    private ChartKeeping keeping;

    @BeforeEach
    void layAChartOnTheBench() {
        file = folder.resolve("slack-water.border.json");
        bench = new Workbench(blank, Optional.of(file), English.LANGUAGE);
        keeping = new ChartKeeping(
                bench, () -> seen, new JournalFolder(folder).begin(problem -> {}), InstantSource.fixed(NOW));
    }

    @Test
    void whatIsDrawnIsKeptWithTheNumberOfItsEdits() throws IOException {
        bench.work(List.of(FIRST), Stitch.LONG);
        bench.work(List.of(SECOND), Stitch.LONG);
        bench.undo();

        assertThat(kept()).isEqualTo(new JournalEntry(Optional.of(file), seen, 3, NOW, bench.chart()));
    }

    @Test
    void aStrokeThatIsNotEndedIsKeptToo() throws IOException {
        bench.beginDrawing(Stitch.LONG).preview(chart -> Edits.setStitches(chart, List.of(FIRST), Stitch.LONG));

        assertThat(kept()).isEqualTo(new JournalEntry(Optional.of(file), seen, 1, NOW, bench.chart()));
    }

    @Test
    void workThatIsSavedOrUndoneIsNotKept() throws IOException {
        bench.work(List.of(FIRST), Stitch.LONG);
        kept();
        bench.undo();
        untilNothingIsKept();
        bench.redo();
        kept();
        bench.saved(bench.chart(), file);
        untilNothingIsKept();
    }

    @Test
    void whatWasDrawnDuringASaveIsKeptAsAnEditOnTheSavedChart() throws IOException {
        bench.work(List.of(FIRST), Stitch.LONG);
        Chart saved = bench.chart();
        bench.work(List.of(SECOND), Stitch.LONG);
        bench.saved(saved, file);

        assertThat(kept()).isEqualTo(new JournalEntry(Optional.of(file), seen, 1, NOW, bench.chart()));
    }

    @Test
    void workIsNotKeptOnceTheChartIsPutAway() throws IOException {
        bench.work(List.of(FIRST), Stitch.LONG);
        kept();
        keeping.end();
        untilNothingIsKept();
    }

    @Test
    void lostWorkThatIsTakenUpStaysKeptWhereItWas() throws IOException {
        // As a process that was killed leaves it: nobody holds it any more.
        bench.work(List.of(FIRST), Stitch.LONG);
        JournalEntry lost = kept();
        byte[] bytes = Files.readAllBytes(journals().get(0));
        keeping.end();
        untilNothingIsKept();
        Path left = Files.write(folder.resolve("left.journal"), bytes);
        JournalFolder next = new JournalFolder(folder);
        Lost.Work work = (Lost.Work) next.lost(problem -> {}).get(0);
        Workbench other = new Workbench(blank, Optional.empty(), English.LANGUAGE);
        ChartKeeping keepingOn =
                new ChartKeeping(other, () -> seen, next.begin(problem -> {}), InstantSource.fixed(NOW));
        keepingOn.goOn(lost, work.journal(), () -> {
            other.open(blank, Optional.of(file));
            other.edit("lost work", chart -> lost.chart());
        });
        assertThat(journals()).containsExactly(left);
        other.work(List.of(SECOND), Stitch.LONG);

        JournalEntry expected = new JournalEntry(Optional.of(file), seen, 2, NOW, other.chart());
        while (!keptIn(journals().get(0)).equals(Optional.of(expected))) {
            Thread.onSpinWait();
        }
        assertThat(journals()).containsExactly(left);
    }

    /** What is on the disk once it is the chart of now. */
    private JournalEntry kept() throws IOException {
        while (true) {
            for (Path journal : journals()) {
                Optional<JournalEntry> entry = keptIn(journal);
                if (entry.filter(found -> found.chart().equals(bench.chart())).isPresent()) {
                    return entry.get();
                }
            }
            Thread.onSpinWait();
        }
    }

    /** Read from a copy, as the next start would read it. */
    private Optional<JournalEntry> keptIn(Path journal) throws IOException {
        Path copies = Files.createTempDirectory(folder, "copy");
        Files.copy(journal, copies.resolve("copy.journal"));
        return new JournalFolder(copies)
                .lost(problem -> {}).stream()
                        .map(lost -> ((Lost.Work) lost).entry())
                        .findFirst();
    }

    private void untilNothingIsKept() throws IOException {
        while (!journals().isEmpty()) {
            Thread.onSpinWait();
        }
    }

    private List<Path> journals() throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(path -> path.toString().endsWith(".journal")).toList();
        }
    }
}
