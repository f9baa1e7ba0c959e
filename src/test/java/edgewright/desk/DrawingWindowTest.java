package edgewright.desk;

import static edgewright.desk.WindowParts.cell;
import static edgewright.desk.WindowParts.onScreen;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.desk.tool.Ghost;
import edgewright.texts.English;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Two journeys with real mouse and keys: drawing under mirrors, and a motif that is carried round the corner. */
class DrawingWindowTest {
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
        Chart blank = Chart.blank(
                "Reed Bank",
                new SideShape(2, 8, 2),
                6,
                Desk.blank(English.LANGUAGE).yarns());
        desk = display.show(blank, folder);
        window = new FrameFixture(robot, desk);
        execute(() -> {
            desk.canvas().fit();
            desk.canvas().requestFocusInWindow();
        });
        robot.waitForIdle();
    }

    @Tag("journey")
    @Test
    void underMirrorsEveryImageIsSeenBeforeTheButtonGoesDownAndWorkedWithIt() {
        // Long is chosen, the mirrors across the corner and the middle of the repeat are put up by key, the line by its
        // button.
        keys(KeyEvent.VK_X, KeyEvent.VK_Y);
        window.toggleButton("tool.line").click();
        assertThat(execute(() -> List.of(
                        window.toggleButton("mirror.corner").target().isSelected(),
                        window.toggleButton("mirror.repeat").target().isSelected(),
                        window.toggleButton("mirror.half").target().isSelected())))
                .containsExactly(true, true, false);

        hover(place(4, Section.REPEAT, 1));
        until(
                "the ghost is seen",
                () -> execute(() -> desk.canvas().toolbox().ghost().isPresent()));
        assertThat(execute(() -> desk.canvas().toolbox().ghost().map(Ghost::lands)))
                .hasValueSatisfying(lands -> assertThat(lands)
                        .containsExactlyInAnyOrder(place(4, Section.REPEAT, 1), place(4, Section.REPEAT, 8)));
        assertThat(window.label("stitchAtCursor").text()).isEqualTo("Here the tool works 2 stitches.");

        robot.pressMouse(MouseButton.LEFT_BUTTON);
        hover(place(4, Section.REPEAT, 4));
        assertThat(letters(4)).isEqualTo("llllllll");
        hover(place(4, Section.REPEAT, 2));
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
        assertThat(letters(4)).as("the line was drawn back").isEqualTo("llbbbbll");
        assertThat(execute(() -> desk.bench().undoName())).contains("4 long stitches");

        // The same by keys: a rectangle at the corner, from Enter to Enter, and one that Escape takes back.
        stand(place(3, Section.TO_CORNER, 4));
        keys(KeyEvent.VK_R, KeyEvent.VK_ENTER, KeyEvent.VK_UP, KeyEvent.VK_RIGHT, KeyEvent.VK_ENTER);
        assertThat(execute(() -> List.of(
                        desk.bench().chart().round(3).toCorner().letters(),
                        desk.bench().chart().round(3).fromCorner().letters(),
                        desk.bench().chart().round(4).toCorner().letters(),
                        desk.bench().chart().round(4).fromCorner().letters())))
                .containsExactly("bbllb", "bllbb", "bbllbb", "bbllbb");
        Chart drawn = execute(() -> desk.bench().chart());
        keys(KeyEvent.VK_ENTER, KeyEvent.VK_UP, KeyEvent.VK_UP);
        assertThat(execute(() -> desk.bench().chart())).isNotEqualTo(drawn);
        keys(KeyEvent.VK_ESCAPE);
        assertThat(execute(() -> desk.bench().chart())).isSameAs(drawn);
        assertThat(execute(() -> desk.bench().undoName())).contains("8 long stitches");
    }

    @Tag("journey")
    @Test
    void aMarkedMotifGoesMirroredRoundTheCornerInTwoStepsAndIsCarriedOnWithEscapeAsTheWayBack() {
        execute(() -> {
            desk.bench().work(List.of(place(3, Section.TO_CORNER, 2), place(4, Section.TO_CORNER, 3)), stitch('l'));
            desk.bench().choose(stitch('p'));
        });
        Chart before = execute(() -> desk.bench().chart());

        // Step one: marked. Step two: worked on the other arm.
        keys(KeyEvent.VK_M);
        drag(place(3, Section.TO_CORNER, 2), place(4, Section.TO_CORNER, 3));
        chord(KeyEvent.VK_M, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        assertThat(execute(() -> List.of(
                        desk.bench().chart().round(3).fromCorner().letters(),
                        desk.bench().chart().round(4).fromCorner().letters())))
                .containsExactly("bbblb", "bbblbb");
        assertThat(execute(() -> desk.canvas().marking().motif().orElseThrow().rounds()))
                .containsExactly("bl", "lb");
        chord(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(execute(() -> desk.bench().chart())).isEqualTo(before);

        // Carried by the mouse, out by a round and along by one, and put back before the button is released.
        execute(() -> desk.canvas().marking().clear());
        drag(place(3, Section.TO_CORNER, 2), place(4, Section.TO_CORNER, 3));
        robot.pressMouse(onScreen(desk, cell(desk, place(3, Section.TO_CORNER, 2))), MouseButton.LEFT_BUTTON);
        hover(place(4, Section.TO_CORNER, 3));
        assertThat(execute(() -> List.of(
                        desk.bench().chart().round(3).toCorner().letters(),
                        desk.bench().chart().round(4).toCorner().letters(),
                        desk.bench().chart().round(5).toCorner().letters())))
                .containsExactly("bbbbb", "bblbbb", "bbblbbb");
        keys(KeyEvent.VK_ESCAPE);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
        assertThat(execute(() -> desk.bench().chart())).isEqualTo(before);
        assertThat(execute(() -> desk.canvas().marking().motif().orElseThrow().rounds()))
                .containsExactly("lb", "bl");

        // Marked by keys round the corner: straight on over the diagonal lies the next round of the other arm.
        execute(() -> desk.canvas().marking().clear());
        stand(place(4, Section.TO_CORNER, 5));
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_LEFT, KeyEvent.VK_LEFT, KeyEvent.VK_DOWN);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        robot.waitForIdle();
        assertThat(execute(() -> desk.canvas().marking().motif().orElseThrow().rounds()))
                .containsExactly("bb.+.b", "bbb+bb");
    }

    private static Stitch stitch(char letter) {
        return Stitch.ofLetter(letter).orElseThrow();
    }

    private static Place place(int round, Section section, int place) {
        return new Place(round, section, place);
    }

    private String letters(int round) {
        return execute(() -> desk.bench().chart().round(round).repeat().letters());
    }

    private void hover(Place place) {
        Point to = onScreen(desk, cell(desk, place));
        robot.moveMouse(to.x - 1, to.y);
        robot.moveMouse(to);
        robot.waitForIdle();
    }

    private void drag(Place from, Place to) {
        robot.pressMouse(onScreen(desk, cell(desk, from)), MouseButton.LEFT_BUTTON);
        hover(to);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    private void stand(Place place) {
        execute(() -> {
            desk.canvas().standAndShow(cell(desk, place));
            desk.canvas().requestFocusInWindow();
        });
        robot.waitForIdle();
    }

    private void keys(int... keys) {
        robot.pressAndReleaseKeys(keys);
        robot.waitForIdle();
    }

    private void chord(int key, int... held) {
        for (int each : held) {
            robot.pressKey(each);
        }
        robot.pressAndReleaseKeys(key);
        for (int each : held) {
            robot.releaseKey(each);
        }
        robot.waitForIdle();
    }
}
