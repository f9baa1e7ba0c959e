package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.Main;
import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.file.ChartFiles;
import edgewright.file.Fingerprint;
import edgewright.file.JournalEntry;
import edgewright.file.JournalFolder;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.assertj.swing.core.Robot;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed with work that is not saved; the next start offers it beside what is saved. */
class KillAndRecoverWindowTest {
    private static final List<Place> DRAWN =
            List.of(new Place(3, Section.REPEAT, 1), new Place(3, Section.REPEAT, 3), new Place(5, Section.REPEAT, 2));

    @TempDir
    private Path folder;

    private final Chart saved = Desk.blank(English.LANGUAGE);
    private final Chart lost = Edits.setStitches(saved, DRAWN, Stitch.LONG);
    private final AtomicBoolean wentOn = new AtomicBoolean();
    private Path state;
    private Path file;
    private Fingerprint fingerprint;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;

    @BeforeEach
    void saveAChart() throws IOException {
        state = Files.createDirectory(folder.resolve("state"));
        file = folder.resolve("slack-water.border.json");
        fingerprint = ChartFiles.write(file, saved);
        robot = display.robot();
    }

    @Tag("journey")
    @Test
    void whatWasDrawnInAProcessThatWasKilledIsTakenUpAndSaved() throws Exception {
        drawAndKill();
        DialogFixture question = startAgain();
        assertThat(question.textBox("message").text())
                .isEqualTo("The last time, the program ended before “New border” was saved in"
                        + " slack-water.border.json. What is framed differs.");
        assertThat(question.textBox("difference").text()).matches("\\d+ stitch(es)? differs?, in round 1\\.");
        question.button("takeUp").click();
        until("the lost work is on the desk", () -> execute(() -> desk.bench().hasUnsavedWork()));

        Chart recovered = execute(() -> desk.bench().chart());
        assertThat(recovered.round(1).repeat().has(Stitch.LONG)).isTrue();
        assertThat(execute(() -> desk.bench().file())).contains(file);
        execute(() -> desk.bench().undo());
        assertThat(execute(() -> desk.bench().chart())).isEqualTo(saved);
        until("nothing unsaved is kept", () -> journals().isEmpty());
        execute(() -> desk.bench().redo());
        until("the work is kept again", () -> journals().size() == 1);
        robot.waitForIdle();
        save();
        until("the work is saved", () -> execute(() -> !desk.bench().hasUnsavedWork()));
        until("nothing is kept any more", () -> journals().isEmpty());
        assertThat(onDisk(file)).isEqualTo(recovered);
        assertThat(wentOn).isTrue();
        assertThat(execute(() -> desk.tabs().all().size())).isEqualTo(1);
    }

    @Test
    void bothAreKeptWhereThatIsTheAnswer() throws IOException {
        lose(new JournalEntry(Optional.of(file), Optional.of(fingerprint), 3, Instant.now(), lost));
        startAgain().button("keepBoth").click();
        until(
                "the saved chart is open",
                () -> execute(() -> desk.bench().file()).isPresent());

        assertThat(onDisk(file)).isEqualTo(saved);
        assertThat(onDisk(folder.resolve("slack-water-recovered.border.json"))).isEqualTo(lost);
        assertThat(execute(() -> desk.bench().chart())).isEqualTo(saved);
        until("nothing is kept any more", () -> journals().isEmpty());
        until("the desk goes on", wentOn::get);
    }

    @Test
    void lostWorkIsDeletedOnlyWhereThatIsTheAnswer() throws IOException {
        lose(new JournalEntry(Optional.of(file), Optional.of(fingerprint), 3, Instant.now(), lost));
        DialogFixture question = startAgain();
        robot.pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        until("the desk goes on", wentOn::get);
        assertThat(question.target().isShowing()).isFalse();
        assertThat(journals()).hasSize(1);
        execute(() -> desk.dispose());

        wentOn.set(false);
        until("nobody holds the lost work", () -> !Files.exists(state.resolve("left.lock")));
        startAgain().button("keepSaved").click();
        until("the desk goes on", wentOn::get);
        until("nothing is kept any more", () -> journals().isEmpty());
        assertThat(onDisk(file)).isEqualTo(saved);
    }

    @Test
    void aChartThatNeverHadAFileIsTakenUpWithoutOne() throws IOException {
        lose(new JournalEntry(Optional.empty(), Optional.empty(), 1, Instant.now(), lost.withTitle("Ebb")));
        DialogFixture question = startAgain();
        assertThat(question.textBox("message").text())
                .isEqualTo("The last time, the program ended before “Ebb” was saved. It has no file yet.");
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        until("the lost work is on the desk", () -> execute(() -> desk.bench().hasUnsavedWork()));

        assertThat(execute(() -> desk.bench().chart().title())).isEqualTo("Ebb");
        assertThat(execute(() -> desk.bench().file())).isEmpty();
    }

    @Test
    void whatWasLostOnSeveralTabsIsTakenUpOnATabEach() throws IOException {
        lose(new JournalEntry(Optional.of(file), Optional.of(fingerprint), 3, Instant.now(), lost));
        lose(new JournalEntry(Optional.empty(), Optional.empty(), 1, Instant.now(), lost.withTitle("Ebb")), "other");
        startAgain().button("takeUp").click();
        question().button("takeUp").click();
        until("the desk goes on", wentOn::get);

        assertThat(execute(() -> desk.tabs().all().stream()
                        .map(pane -> pane.document().bench().chart())
                        .toList()))
                .containsExactlyInAnyOrder(lost, lost.withTitle("Ebb"));
        until("each is kept still", () -> journals().size() == 2);
        execute(() -> desk.tabs().all().forEach(pane -> pane.document().bench().undo()));
        until("nothing unsaved is kept of either", () -> journals().isEmpty());
    }

    /** Draws with the keys in a process of the program, and kills it as soon as something of it is on the disk. */
    private void drawAndKill() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Dedgewright.settings=" + folder.resolve("killed.properties"),
                        "-D" + JournalFolder.FOLDER_PROPERTY + "=" + state,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        file.toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            until("the chart is open there", () -> !endingIn(".open").isEmpty());
            java.awt.Robot keys = new java.awt.Robot();
            until("an edit is on the disk", () -> {
                keys.keyPress(KeyEvent.VK_L);
                keys.keyRelease(KeyEvent.VK_L);
                return !journals().isEmpty();
            });
        } finally {
            process.destroyForcibly();
            process.waitFor();
        }
        assertThat(onDisk(file)).isEqualTo(saved);
    }

    /** Leaves this as a process that was killed does: nobody holds it. */
    private void lose(JournalEntry entry) throws IOException {
        lose(entry, "left");
    }

    private void lose(JournalEntry entry, String name) throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere-" + name));
        new JournalFolder(elsewhere).begin(problem -> {}).keep(entry);
        until("it is kept", () -> !endingIn(elsewhere, ".journal").isEmpty());
        Files.copy(endingIn(elsewhere, ".journal").get(0), state.resolve(name + ".journal"));
    }

    private DialogFixture startAgain() {
        desk = display.show(saved, folder);
        execute(() -> desk.keepJournal(new JournalFolder(state), () -> wentOn.set(true)));
        return question();
    }

    private DialogFixture question() {
        DialogFixture question =
                WindowFinder.findDialog("lostWork").withTimeout(30_000).using(robot);
        until("it has the keys", () -> execute(() -> question.target().isFocused()));
        return question;
    }

    private void save() {
        until("the desk has the keys", () -> execute(() -> desk.isFocused()));
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(KeyEvent.VK_S);
        robot.releaseKey(KeyEvent.VK_CONTROL);
    }

    private static Chart onDisk(Path chart) {
        return ((ReadResult.Read) ChartFiles.read(chart)).chart();
    }

    private List<Path> journals() throws IOException {
        return endingIn(".journal");
    }

    private List<Path> endingIn(String ending) throws IOException {
        return endingIn(state, ending);
    }

    private static List<Path> endingIn(Path where, String ending) throws IOException {
        try (var files = Files.list(where)) {
            return files.filter(path -> path.toString().endsWith(ending)).toList();
        }
    }
}
