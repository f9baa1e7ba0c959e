package edgewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Stitches that are marked on the chart, worked together, copied and put in elsewhere. */
class MotifWindowTest {
    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private FrameFixture window;

    @BeforeEach
    void openTheDesk() {
        robot = display.robot();
        desk = display.show(folder);
        window = new FrameFixture(robot, desk);
        execute(() -> {
            desk.bench().edit("six rounds", chart -> {
                Chart six = chart;
                while (six.rounds().size() < 6) {
                    six = Edits.duplicateRounds(six, 1, 1);
                }
                return six;
            });
            desk.canvas().fit();
            desk.canvas().requestFocusInWindow();
        });
        robot.waitForIdle();
    }

    @Test
    void whatIsMarkedWithTheMouseIsWorkedCopiedAndPastedAsInAMirror() {
        GridCell from = cell(new Place(3, Section.REPEAT, 1));
        GridCell to = cell(new Place(4, Section.REPEAT, 3));
        drag(from, to);
        assertThat(execute(() -> desk.canvas().marking().motif().orElseThrow().rounds()))
                .containsExactly("bbb", "bbb");

        robot.pressAndReleaseKeys(KeyEvent.VK_P);
        robot.waitForIdle();
        assertThat(letters(4)).startsWith("ppp");

        execute(() -> desk.bench().work(List.of(new Place(4, Section.REPEAT, 1)), Stitch.LONG));
        press(KeyEvent.VK_C);
        assertThat(window.label("news").text()).isEqualTo("Copied 2 rounds by 3 columns.");

        execute(() -> {
            desk.canvas().marking().clear();
            desk.canvas().standAndShow(cell(new Place(5, Section.REPEAT, 1)));
            desk.canvas().requestFocusInWindow();
        });
        robot.waitForIdle();
        robot.pressKey(KeyEvent.VK_SHIFT);
        press(KeyEvent.VK_V);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        robot.waitForIdle();
        assertThat(List.of(letters(3).substring(0, 3), letters(4).substring(0, 3)))
                .containsExactly("ppp", "lpp");
        assertThat(List.of(letters(5).substring(0, 3), letters(6).substring(0, 3)))
                .containsExactly("ppp", "ppl");

        press(KeyEvent.VK_Z);
        assertThat(letters(6)).startsWith("bbb");
    }

    @Test
    void whatIsMarkedWithTheKeysIsCutOut() {
        execute(() -> {
            desk.bench().work(List.of(new Place(2, Section.REPEAT, 2), new Place(2, Section.REPEAT, 3)), Stitch.PLAIN);
            desk.canvas().standAndShow(cell(new Place(2, Section.REPEAT, 2)));
        });
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_LEFT, KeyEvent.VK_UP);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        robot.waitForIdle();
        assertThat(execute(() -> desk.canvas().marking().motif().orElseThrow().rounds()))
                .containsExactly("pp", "bb");

        press(KeyEvent.VK_X);
        assertThat(letters(2)).doesNotContain("p");
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        robot.waitForIdle();
        assertThat(execute(() -> desk.canvas().marking().isEmpty())).isTrue();
    }

    @Test
    void whatDoesNotFitOfAPastedMotifIsSaidAndUndoTakesTheMarksAlong() {
        execute(() -> {
            Toolkit.getDefaultToolkit()
                    .getSystemClipboard()
                    .setContents(new StringSelection("pp\nll\npp\nll\npp\n"), null);
            desk.canvas()
                    .standAndShow(desk.canvas()
                            .cells()
                            .cellsOf(new Place(11, Section.REPEAT, 1))
                            .get(0));
            desk.canvas().requestFocusInWindow();
        });
        robot.waitForIdle();
        press(KeyEvent.VK_V);

        assertThat(letters(12)).startsWith("ll");
        assertThat(window.label("news").text())
                .isEqualTo("Pasted in 2 rounds. 3 rounds lie beyond the outermost round and were not pasted.");
        assertThat(execute(() -> desk.bench().undoName())).contains("motif of 2 rounds, 2 columns");
        assertThat(execute(() -> desk.canvas().marking().motif().orElseThrow().rounds()))
                .containsExactly("pp", "ll");

        press(KeyEvent.VK_Z);
        assertThat(letters(12)).startsWith("bb");
        assertThat(execute(() -> desk.canvas().marking().isEmpty())).isTrue();
    }

    private String letters(int round) {
        return execute(() -> desk.bench().chart().round(round).repeat().letters());
    }

    /** The first drawn cell of a place, on the arm that is worked to the left. */
    private GridCell cell(Place place) {
        return execute(() -> desk.canvas().cells().cellsOf(place).get(0));
    }

    private void drag(GridCell from, GridCell to) {
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressMouse(onScreen(from), MouseButton.LEFT_BUTTON);
        robot.moveMouse(onScreen(to));
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        robot.waitForIdle();
    }

    private Point onScreen(GridCell cell) {
        return execute(() -> {
            Rectangle at = desk.canvas().boundsOf(cell);
            Point point = desk.canvas().getLocationOnScreen();
            point.translate((int) at.getCenterX(), (int) at.getCenterY());
            return point;
        });
    }

    private void press(int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
    }
}
