package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.file.ChartFiles;
import edgewright.file.JournalFolder;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.swing.core.Robot;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Others change the file of the chart on the desk, or have it open too. */
class ChangedFileWindowTest {
    private static final Place MINE = new Place(3, Section.REPEAT, 1);
    private static final Place THEIRS = new Place(5, Section.REPEAT, 2);

    @TempDir
    private Path folder;

    private final Chart before = Desk.blank(English.LANGUAGE);
    private final Chart mine = Edits.setStitches(before, List.of(MINE), Stitch.LONG);
    private final Chart theirs = Edits.setStitches(before, List.of(THEIRS), Stitch.LONG);
    private JournalFolder journals;
    private Path file;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private FrameFixture window;

    @BeforeEach
    void openAChart() throws IOException {
        journals = new JournalFolder(folder.resolve("state"));
        file = folder.resolve("slack-water.border.json");
        ChartFiles.write(file, before);
        robot = display.robot();
        desk = display.show(before, folder);
        window = new FrameFixture(robot, desk);
    }

    @Tag("journey")
    @Test
    void whatDiffersIsShownAndFollowsTheWorkAndAReloadCanBeUndone() throws IOException {
        open();
        DialogFixture question = changeByOthers();
        assertThat(question.textBox("difference").text()).isEqualTo("1 stitch differs, in round 5.");
        execute(() -> desk.bench().work(List.of(MINE), Stitch.LONG));
        assertThat(question.textBox("difference").text()).isEqualTo("2 stitches differ, in rounds 3 and 5.");
        question.button("reload").click();
        until("the file is reloaded", () -> window.label("news").text().startsWith("Reloaded"));

        assertThat(execute(() -> desk.bench().chart())).isEqualTo(theirs);
        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isFalse();
        execute(() -> desk.bench().undo());
        assertThat(execute(() -> desk.bench().chart())).isEqualTo(mine);
        assertThat(onDisk(file)).isEqualTo(theirs);
    }

    @Test
    void bothAreKeptWhereThatIsTheAnswer() throws IOException {
        open();
        execute(() -> desk.bench().work(List.of(MINE), Stitch.LONG));
        changeByOthers().button("keepBoth").click();
        Path beside = folder.resolve("slack-water-mine.border.json");
        until(
                "the chart lies in a file of its own",
                () -> execute(() -> desk.bench().file()).filter(beside::equals).isPresent());

        assertThat(onDisk(beside)).isEqualTo(mine);
        assertThat(onDisk(file)).isEqualTo(theirs);
        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isFalse();
    }

    @Test
    void whoeverGoesOnIsAskedOnceMoreBeforeTheFileIsReplaced() throws IOException {
        open();
        execute(() -> desk.bench().work(List.of(MINE), Stitch.LONG));
        changeByOthers().button("goOn").click();
        until("the desk goes on", () -> window.label("news").text().startsWith("The chart on the desk stays"));
        save();
        JOptionPaneFinder.findOptionPane()
                .withTimeout(30_000)
                .using(robot)
                .button(org.assertj.swing.core.matcher.JButtonMatcher.withName("answer1"))
                .click();
        until("the chart is saved", () -> execute(() -> !desk.bench().hasUnsavedWork()));

        assertThat(onDisk(file)).isEqualTo(mine);
    }

    @Test
    void aFileThatIsGoneAndAFileThatIsNoChartAreReported() throws IOException {
        open();
        Files.delete(file);
        until("it is reported", () -> window.label("news").text().contains("is not there any more"));
        Files.writeString(file, "ebb");
        until("it is reported", () -> window.label("news").text().contains("cannot be read as a chart now"));
        ChartFiles.write(file, before);
        until("it is the chart again", () -> window.label("news").text().contains("holds again what it held"));

        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isFalse();
    }

    @Test
    void whoeverOpensAChartThatIsOpenElsewhereIsTold() {
        JournalFolder elsewhere = new JournalFolder(folder.resolve("state"));
        assertThat(elsewhere.enter(file).isElsewhere()).isFalse();
        begin();
        DialogFixture told =
                WindowFinder.findDialog("openElsewhere").withTimeout(30_000).using(robot);

        assertThat(told.textBox("message").text())
                .startsWith("slack-water.border.json is open in another window of Edgewright too.");
        told.button("answer1").click();
    }

    private void begin() {
        execute(() -> desk.keepJournal(journals, () -> desk.open(file)));
    }

    private void open() {
        begin();
        until("the chart is open", () -> execute(() -> desk.bench().file()).isPresent());
        robot.waitForIdle();
    }

    private DialogFixture changeByOthers() throws IOException {
        ChartFiles.write(file, theirs);
        return WindowFinder.findDialog("changedFile").withTimeout(30_000).using(robot);
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
}
