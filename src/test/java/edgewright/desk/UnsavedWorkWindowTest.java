package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.swing.JProgressBar;
import org.assertj.swing.core.Robot;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Files are read and written beside the work at the desk; what is drawn meanwhile is not lost by it. */
class UnsavedWorkWindowTest {
    private static final Place FIRST = new Place(3, Section.REPEAT, 1);
    private static final Place SECOND = new Place(3, Section.REPEAT, 3);

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private FrameFixture window;
    private Path file;

    @BeforeEach
    void openAChartOfItsOwn() throws IOException {
        robot = display.robot();
        file = folder.resolve("slack-water.border.json");
        desk = WindowParts.desk(Desk.blank(English.LANGUAGE), folder);
        ChartFiles.write(file, Desk.blank(English.LANGUAGE));
        window = new FrameFixture(robot, desk);
        window.show(WindowParts.SIZE);
        execute(() -> desk.open(file));
        until("the chart is open", () -> desk.bench().file().isPresent());
        robot.waitForIdle();
    }

    @AfterEach
    void putAway() {
        execute(() -> desk.dispose());
    }

    @Test
    void whatIsDrawnDuringTheSaveIsAskedAboutBeforeTheDeskCloses() {
        draw(FIRST);
        whenTheNextJobBegins(() -> draw(SECOND));
        window.close();
        answer(1);
        answer(3);
        until("the question is gone", () -> window.label("news").text().equals("The chart stays on the desk."));

        assertThat(execute(() -> desk.isDisplayable())).isTrue();
        assertThat(List.of(onDisk(FIRST), onDisk(SECOND))).containsExactly(Stitch.LONG, Stitch.BACK_LOOP);
        assertThat(execute(() -> Map.of(
                        "changed",
                        desk.bench().hasUnsavedWork(),
                        "there",
                        desk.bench().chart().stitch(SECOND) == Stitch.LONG)))
                .isEqualTo(Map.of("changed", true, "there", true));
    }

    @Test
    void whatIsDrawnDuringTheSaveIsSavedByAnsweringOnceMore() {
        draw(FIRST);
        whenTheNextJobBegins(() -> draw(SECOND));
        window.close();
        answer(1);
        answer(1);
        until("the desk is closed", () -> !desk.isDisplayable());

        assertThat(List.of(onDisk(FIRST), onDisk(SECOND))).containsExactly(Stitch.LONG, Stitch.LONG);
    }

    @Test
    void aPlainSaveAsksNothingWhateverIsDrawnMeanwhile() {
        draw(FIRST);
        whenTheNextJobBegins(() -> draw(SECOND));
        execute(() -> desk.getRootPane().requestFocusInWindow());
        robot.pressKey(java.awt.event.KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(java.awt.event.KeyEvent.VK_S);
        robot.releaseKey(java.awt.event.KeyEvent.VK_CONTROL);
        until("the chart is saved", () -> window.label("news").text().startsWith("Saved"));
        robot.waitForIdle();

        assertThat(execute(() -> desk.getTitle())).contains("slack-water");
        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isTrue();
        assertThat(execute(() -> desk.getOwnedWindows())).noneMatch(java.awt.Window::isShowing);
    }

    @Test
    void aFileThatIsReadWhileSomethingIsDrawnLiesOnATabOfItsOwnAndNothingIsLost() throws IOException {
        Path other = folder.resolve("reed-bank.border.json");
        Files.copy(Path.of("sample-charts", "reed-bank.border.json"), other);
        whenTheNextJobBegins(() -> draw(SECOND));
        execute(() -> desk.open(other));
        until("the other chart is open", () -> execute(() -> desk.document().isOf(other)));

        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isFalse();
        execute(() -> desk.open(file));
        assertThat(execute(() -> desk.bench().chart().stitch(SECOND))).isEqualTo(Stitch.LONG);
        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isTrue();
    }

    private void draw(Place place) {
        execute(() -> desk.bench().work(List.of(place), Stitch.LONG));
    }

    /** Does something once, after the next job has begun and before it can be over. */
    private void whenTheNextJobBegins(Runnable deed) {
        JProgressBar bar = (JProgressBar) named(desk, "progress.FILE");
        boolean[] done = {false};
        execute(() -> bar.addPropertyChangeListener("indeterminate", event -> {
            if (Boolean.TRUE.equals(event.getNewValue()) && !done[0]) {
                done[0] = true;
                deed.run();
            }
        }));
    }

    private void answer(int number) {
        JOptionPaneFinder.findOptionPane()
                .withTimeout(30_000)
                .using(robot)
                .button(org.assertj.swing.core.matcher.JButtonMatcher.withName("answer" + number))
                .click();
        robot.waitForIdle();
    }

    private Stitch onDisk(Place place) {
        return ((ReadResult.Read) ChartFiles.read(file)).chart().stitch(place);
    }
}
