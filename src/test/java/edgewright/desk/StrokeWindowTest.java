package edgewright.desk;

import static edgewright.desk.WindowParts.cell;
import static edgewright.desk.WindowParts.onScreen;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A stroke from the press of a button to its release, and what ends it before. */
class StrokeWindowTest {
    private static final Place FROM = new Place(4, Section.REPEAT, 1);
    private static final Place TO = new Place(4, Section.REPEAT, 4);
    private static final Place ELSEWHERE = new Place(10, Section.REPEAT, 3);

    @TempDir
    private Path folder;

    private final List<Throwable> mistakes = new ArrayList<>();

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;

    @BeforeEach
    void openTheDesk() {
        robot = display.robot();
        desk = display.show(folder);
        execute(() -> Thread.currentThread().setUncaughtExceptionHandler((thread, problem) -> mistakes.add(problem)));
        execute(() -> desk.canvas().fit());
        robot.waitForIdle();
    }

    @Test
    void aStrokeEndsWithoutATraceWhenAnotherChartIsOpened() {
        Point to = onScreen(desk, cell(desk, ELSEWHERE));
        press(FROM);
        Chart small = Chart.blank(
                "Slack Water", new SideShape(1, 3, 1), 3, desk.bench().chart().yarns());
        execute(() -> desk.bench().open(small, Optional.empty()));
        robot.moveMouse(to);
        robot.moveMouse(onScreen(desk, cell(desk, new Place(2, Section.REPEAT, 1))));
        robot.moveMouse(onScreen(desk, cell(desk, new Place(2, Section.REPEAT, 3))));
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();

        assertThat(mistakes).isEmpty();
        assertThat(execute(() -> desk.bench().chart())).isEqualTo(small);
        assertThat(execute(() -> desk.bench().undoName())).isEmpty();
    }

    @Test
    void anEditDuringADragEndsTheStroke() {
        press(FROM);
        execute(() -> desk.bench().edit("moved on", chart -> Edits.shiftRepeat(chart, 1)));
        Chart edited = execute(() -> desk.bench().chart());
        drag(TO);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();

        assertThat(execute(() -> desk.bench().chart())).isEqualTo(edited);
        execute(() -> desk.bench().undo());
        assertThat(execute(() -> desk.bench().undoName()))
                .as("what was drawn before is an edit of its own")
                .contains("1 long stitch");
    }

    @Test
    void escapeTakesAStrokeBackWithoutATrace() {
        Chart before = execute(() -> desk.bench().chart());
        press(FROM);
        drag(TO);
        assertThat(execute(() -> desk.bench().chart())).isNotEqualTo(before);
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        robot.waitForIdle();
        assertThat(execute(() -> desk.bench().chart())).isEqualTo(before);

        drag(FROM);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
        assertThat(execute(() -> desk.bench().chart())).isEqualTo(before);
        assertThat(execute(() -> desk.bench().undoName())).isEmpty();
        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isFalse();
    }

    @Test
    void controlAndYDoesAgainWhatWasUndone() {
        execute(() -> desk.bench().work(List.of(FROM), Stitch.LONG));
        Chart drawn = execute(() -> desk.bench().chart());
        execute(() -> desk.bench().undo());
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(KeyEvent.VK_Y);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();

        assertThat(execute(() -> desk.bench().chart())).isEqualTo(drawn);
    }

    private void press(Place place) {
        robot.pressMouse(onScreen(desk, cell(desk, place)), MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    private void drag(Place place) {
        GridCell cell = cell(desk, place);
        robot.moveMouse(onScreen(desk, cell));
        robot.waitForIdle();
    }
}
