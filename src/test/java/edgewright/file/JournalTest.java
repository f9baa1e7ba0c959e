package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Chart;
import edgewright.file.JournalFolder.Lost;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
import edgewright.testing.SampleFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Unsaved work on the disk, and what is found of it at the next start. */
class JournalTest {
    private static final Instant AT = Instant.parse("2026-03-14T09:26:53Z");

    @TempDir
    private Path home;

    private Path state;
    private JournalFolder folder;
    private JournalEntry first;
    private JournalEntry second;

    @BeforeEach
    void readTwoStatesOfAChart() {
        state = home.resolve("state").resolve("journal");
        folder = new JournalFolder(state);
        Path file = SampleFiles.all().get(0).toAbsolutePath();
        ReadResult.Read read = (ReadResult.Read) ChartFiles.read(file);
        Chart chart = read.chart();
        first = new JournalEntry(
                Optional.of(file),
                Optional.of(read.fingerprint()),
                1,
                AT,
                chart.withNotes("one edit\n\nand an empty line"));
        second = new JournalEntry(Optional.empty(), Optional.empty(), 12, AT.plusSeconds(9), chart.withTitle("Ebb"));
    }

    @Test
    void theLastOfTheEditsIsOnTheDiskWhole() throws Exception {
        Journal journal = folder.begin(problem -> {});
        journal.keep(first);
        journal.keep(second);
        folder.settle();

        assertThat(namesIn(state)).containsExactly(".journal", ".lock");
        assertThat(JournalText.entry(Files.readAllBytes(journalFile()))).isEqualTo(second);
    }

    @Test
    void everyEditIsOnTheDiskWhileTheWorkGoesOn() throws Exception {
        Journal journal = folder.begin(problem -> {});
        for (JournalEntry entry : List.of(first, second, first)) {
            journal.keep(entry);
            while (!isKept(entry)) {
                Thread.onSpinWait();
            }
        }
        folder.settle();
    }

    @Test
    void onceNothingIsUnsavedNothingIsLeft() throws Exception {
        Journal journal = folder.begin(problem -> {});
        journal.keep(first);
        while (!isKept(first)) {
            Thread.onSpinWait();
        }
        journal.clear();
        folder.settle();

        assertThat(state).isEmptyDirectory();
    }

    @Test
    void workOfAProcessThatLivesIsNotLost() throws Exception {
        folder.begin(problem -> {}).keep(first);
        folder.settle();

        assertThat(new JournalFolder(state).lost(problem -> {})).isEmpty();
    }

    @Test
    void workOfAProcessThatEndedIsFoundAndGoneOnWithInItsPlace() throws Exception {
        lose("a", first);
        lose("b", second);
        List<Lost> lost = folder.lost(problem -> {});

        // The latest first.
        assertThat(lost.stream().map(one -> ((Lost.Work) one).entry())).containsExactly(second, first);
        assertThat(new JournalFolder(state).lost(problem -> {})).isEmpty();
        journal(lost, 0).keep(first);
        journal(lost, 1).clear();
        folder.settle();
        assertThat(namesIn(state)).containsExactly(".journal", ".lock");
        assertThat(JournalText.entry(Files.readAllBytes(state.resolve("b.journal"))))
                .isEqualTo(first);
    }

    @Test
    void lostWorkThatIsLeftForLaterIsFoundAgain() throws Exception {
        lose("a", first);
        journal(folder.lost(problem -> {}), 0).end();
        folder.settle();

        JournalFolder next = new JournalFolder(state);
        assertThat(next.lost(problem -> {}).stream().map(one -> ((Lost.Work) one).entry()))
                .containsExactly(first);
    }

    @Test
    void whateverIsTornOrChangedIsRefused() {
        byte[] whole = JournalText.bytes(first);
        Set<FileFault> faults = new HashSet<>();
        for (int length = 0; length < whole.length; length += length < 400 ? 1 : 97) {
            faults.add(refusal(Arrays.copyOf(whole, length)));
        }
        for (int at = 0; at < whole.length; at += at < 400 ? 1 : 97) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Optional<JournalEntry> read = entry(changed);
            // A digit of the number of edits or of the time may change unseen, or a letter of a name; the chart may
            // not.
            read.ifPresent(entry -> assertThat(entry.chart()).isEqualTo(first.chart()));
        }
        assertThat(faults)
                .containsExactlyInAnyOrder(FileFault.Simple.NOT_A_JOURNAL, FileFault.Simple.JOURNAL_NOT_WHOLE);
    }

    @Test
    void aTornJournalIsReportedOnceAndKept() throws Exception {
        byte[] half = Arrays.copyOf(JournalText.bytes(first), 1_000);
        Files.createDirectories(state);
        Files.write(state.resolve("a.journal"), half);
        Path kept = state.resolve("a.journal.broken");

        assertThat(folder.lost(problem -> {}))
                .containsExactly(new Lost.Broken(kept, Problem.ofFile(FileFault.Simple.JOURNAL_NOT_WHOLE)));
        assertThat(Files.readAllBytes(kept)).isEqualTo(half);
        assertThat(folder.lost(problem -> {})).isEmpty();
        assertThat(namesIn(state)).containsExactly(".broken");
    }

    @Test
    void signsOfKilledProcessesAreClearedAway() throws IOException {
        Files.createDirectories(state);
        Files.createFile(state.resolve("a.lock"));
        Files.createFile(state.resolve("b.open"));

        assertThat(folder.lost(problem -> {})).isEmpty();
        assertThat(state).isEmptyDirectory();
    }

    @Test
    void aDiskThatTakesNoJournalIsReportedOnceUntilItDoes() throws Exception {
        Files.writeString(home.resolve("state"), "no folder");
        BlockingQueue<Problem> told = new LinkedBlockingQueue<>();
        Journal journal = folder.begin(told::add);
        journal.keep(first);
        assertThat(told.poll(1, TimeUnit.MINUTES)).isNotNull();
        journal.keep(second);
        folder.settle();

        assertThat(told).isEmpty();
    }

    @Test
    void aChartIsElsewhereWhileAnotherHasItOpen() throws IOException {
        Path chart = Files.createFile(home.resolve("reed.border.json"));
        Path alias = Files.createSymbolicLink(home.resolve("alias.border.json"), chart);
        ChartPresence here = folder.enter(chart);
        ChartPresence there = new JournalFolder(state).enter(alias);

        assertThat(List.of(here.isElsewhere(), there.isElsewhere())).containsExactly(false, true);
        there.leave();
        here.leave();
        assertThat(folder.enter(alias).isElsewhere()).isFalse();
    }

    @Test
    void journalsLieWhereTheMachineKeepsState() {
        assertThat(JournalFolder.folderOfUser(Map.of("XDG_STATE_HOME", "/marsh/state", "HOME", "/marsh")))
                .isEqualTo(Path.of("/marsh/state/edgewright/journal"));
        assertThat(JournalFolder.folderOfUser(Map.of("LOCALAPPDATA", "/marsh/local", "HOME", "/marsh")))
                .isEqualTo(Path.of("/marsh/local/edgewright/journal"));
        assertThat(JournalFolder.folderOfUser(Map.of("XDG_STATE_HOME", "here", "HOME", "/marsh")))
                .isEqualTo(Path.of("/marsh/.local/state/edgewright/journal"));
        assertThat(JournalFolder.folderOfUser(Map.of()))
                .isEqualTo(Path.of(System.getProperty("user.home"), ".local", "state", "edgewright", "journal"));
    }

    private static Journal journal(List<Lost> lost, int index) {
        return ((Lost.Work) lost.get(index)).journal();
    }

    private void lose(String name, JournalEntry entry) throws IOException {
        Files.createDirectories(state);
        Files.write(state.resolve(name + ".journal"), JournalText.bytes(entry));
    }

    private static FileFault refusal(byte[] bytes) {
        FileFault[] fault = new FileFault[1];
        assertThatThrownBy(() -> JournalText.entry(bytes))
                .isInstanceOfSatisfying(
                        FileProblemException.class,
                        refusal -> fault[0] = (FileFault) refusal.problem().fault());
        return fault[0];
    }

    private static Optional<JournalEntry> entry(byte[] bytes) {
        try {
            return Optional.of(JournalText.entry(bytes));
        } catch (FileProblemException e) {
            return Optional.empty();
        }
    }

    private boolean isKept(JournalEntry entry) throws IOException {
        if (!Files.isDirectory(state)) {
            return false;
        }
        try (var files = Files.list(state)) {
            return files.filter(file -> file.toString().endsWith(".journal"))
                    .anyMatch(file -> ReadOnce.of(file).equals(Optional.of(entry)));
        }
    }

    private Path journalFile() throws IOException {
        try (var files = Files.list(state)) {
            return files.filter(file -> file.toString().endsWith(".journal"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** The ends of the names, since the rest is by chance. */
    private static List<String> namesIn(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .map(name -> name.substring(name.lastIndexOf('.')))
                    .sorted()
                    .toList();
        }
    }

    /** At every moment of the writing there is a whole journal under the name. */
    private static final class ReadOnce {
        static Optional<JournalEntry> of(Path file) {
            try {
                return Optional.of(JournalText.entry(Files.readAllBytes(file)));
            } catch (IOException e) {
                throw new AssertionError("a journal was not whole at some moment", e);
            }
        }
    }
}
