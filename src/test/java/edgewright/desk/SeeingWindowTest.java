package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.desk.parts.KeptSplit;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.Settings;
import edgewright.draw.paint.ColourVision;
import edgewright.draw.side.SideLayout;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JScrollPane;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What a chart is seen as, with real keys and a real mouse: a side, in greys, with the panes folded, and as a whole border. */
class SeeingWindowTest {
    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;

    @BeforeEach
    void openTheDesk() {
        robot = display.robot();
        desk = display.show(folder);
    }

    @Test
    void aSideIsDrawnOnAndTheWayOfSeeingIsRemembered() {
        control(KeyEvent.VK_9);
        until("a side lies there", () -> execute(() -> desk.canvas().cells() instanceof SideLayout));
        Place place = new Place(4, Section.REPEAT, 3);
        GridCell cell = execute(() -> desk.canvas().cells().cellsOf(place).get(0));
        robot.click(WindowParts.onScreen(desk, cell), MouseButton.LEFT_BUTTON, 1);
        until("the stitch is worked", () -> execute(() -> desk.bench().chart().stitch(place) == Stitch.LONG));
        press(KeyEvent.VK_G, KeyEvent.VK_CONTROL, KeyEvent.VK_ALT);
        press(KeyEvent.VK_H, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);

        Seeing last = new Seeing(Seeing.Drawn.SIDE, HookHand.LEFT, ColourVision.GREY);
        until(
                "it is remembered",
                () -> Seeing.of(new Settings(folder.resolve("desk.properties"))).equals(last));
        DeskFrame tomorrow = WindowParts.desk(Desk.blank(English.LANGUAGE), folder);
        assertThat(execute(() -> tomorrow.canvas().cells()))
                .isInstanceOfSatisfying(
                        SideLayout.class, cells -> assertThat(cells.hand()).isEqualTo(HookHand.LEFT));
        execute(tomorrow::dispose);
    }

    @Test
    void aFoldedPaneIsOneLineGivesTheChartItsRoomAndIsRemembered() {
        int before = cellPx();
        press(KeyEvent.VK_2, KeyEvent.VK_ALT);
        until("the words are folded", () -> execute(() -> split("wordsSplit").isFolded()));
        robot.click(WindowParts.named(desk, "deskSplit.fold"));
        until("the findings are folded", () -> execute(() -> split("deskSplit").isFolded()));
        until("the chart has the room", () -> cellPx() > before);
        Component line = WindowParts.named(desk, "deskSplit.line");
        assertThat(execute(line::getWidth)).isLessThan(30);

        DeskFrame tomorrow = WindowParts.desk(Desk.blank(English.LANGUAGE), folder);
        assertThat(WindowParts.named(tomorrow, "deskSplit.line")).isNotNull();
        assertThat(WindowParts.named(tomorrow, "wordsSplit.line")).isNotNull();
        execute(tomorrow::dispose);
        robot.click(line);
        until(
                "the findings are there again",
                () -> execute(() -> !split("deskSplit").isFolded()));
    }

    @Test
    void theRulersStayAsTheChartIsScrolledAndGoWithIt() {
        execute(() -> desk.setSize(new Dimension(1_100, 760)));
        for (int i = 0; i < 5; i++) {
            control(KeyEvent.VK_EQUALS);
        }
        robot.waitForIdle();
        JScrollPane table = (JScrollPane) WindowParts.named(desk, "table");
        execute(() -> table.getViewport().setViewPosition(new Point(60, 90)));
        until(
                "the rulers have gone with the chart",
                () -> execute(() -> table.getRowHeader().getViewPosition().equals(new Point(0, 90))
                        && table.getColumnHeader().getViewPosition().equals(new Point(60, 0))));
        assertThat(execute(() -> WindowParts.named(desk, "ruler.beside").isShowing()))
                .isTrue();
    }

    @Test
    void theWholeBorderFollowsWhatIsDrawn() {
        control(KeyEvent.VK_B);
        until("the border is seen", () -> sceneWindow().isPresent());
        Window scene = sceneWindow().orElseThrow();
        Component canvas = WindowParts.named(scene, "scene");
        until("the border is painted", () -> colours(shown(canvas)) > 300);
        int[] painted = shown(canvas);
        execute(() -> desk.bench().work(List.of(new Place(5, Section.REPEAT, 2)), Stitch.LONG));
        until("the long stitch is seen", () -> !Arrays.equals(painted, shown(canvas)));
        robot.focus(canvas);
        robot.pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        until("it is closed", () -> execute(() -> !scene.isShowing()));
    }

    private static int[] shown(Component canvas) {
        return execute(() -> {
            BufferedImage image = new BufferedImage(canvas.getWidth(), canvas.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            canvas.paint(g);
            g.dispose();
            return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        });
    }

    /** Worked fabric has many, a word or two has few. */
    private static long colours(int[] pixels) {
        return Arrays.stream(pixels).distinct().count();
    }

    private Optional<Window> sceneWindow() {
        return execute(() -> Stream.of(desk.getOwnedWindows())
                .filter(window -> "sceneWindow".equals(window.getName()) && window.isShowing())
                .findFirst());
    }

    private KeptSplit split(String name) {
        return (KeptSplit) WindowParts.named(desk, name);
    }

    private void control(int key) {
        press(key, KeyEvent.VK_CONTROL);
    }

    private void press(int key, int... held) {
        for (int each : held) {
            robot.pressKey(each);
        }
        robot.pressAndReleaseKey(key);
        for (int each : held) {
            robot.releaseKey(each);
        }
    }

    private int cellPx() {
        return execute(() -> desk.canvas()
                .boundsOf(desk.canvas()
                        .cells()
                        .cellsOf(new Place(1, Section.REPEAT, 1))
                        .get(0))
                .width);
    }
}
