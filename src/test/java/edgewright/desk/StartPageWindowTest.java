package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.desk.command.Hindrance;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The program is opened without a chart. */
class StartPageWindowTest {
    @TempDir
    private Path folder;

    private Path kept;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;

    @BeforeEach
    void openTheDeskWithoutAChart() throws Exception {
        kept = Files.copy(Path.of("sample-charts", "mud-ripple.border.json"), folder.resolve("mud.border.json"));
        Settings settings = new Settings(folder.resolve("desk.properties"));
        settings.addRecent(folder.resolve("washed-away.border.json"));
        settings.addRecent(kept);
        robot = display.robot();
        desk = execute(() -> {
            Look.setUp(Theme.LIGHT);
            DeskFrame frame = new DeskFrame(Desk.blank(English.LANGUAGE), settings, English.LANGUAGE);
            frame.setSize(1024, 700);
            frame.deck().begin();
            frame.setVisible(true);
            return frame;
        });
        robot.waitForIdle();
    }

    @AfterEach
    void putAway() {
        execute(() -> desk.dispose());
    }

    @Test
    void aSampleIsOpenedByMouseAndTheStartPageComesBack() {
        robot.click(named(desk, "start.sample.tide-steps"));
        robot.waitForIdle();
        assertThat(titleOnDesk()).isEqualTo("Tide Steps");
        assertThat(execute(() -> desk.deck().isStart())).isFalse();
        assertThat(execute(() -> desk.bench().hasUnsavedWork())).isFalse();
        assertThat(execute(() -> desk.canvas().isFocusOwner())).isTrue();

        execute(() -> desk.actions().get("startPage").actionPerformed(null));
        robot.waitForIdle();
        assertThat(execute(() -> desk.actions().command("undo").orElseThrow().hindrance()))
                .contains(Hindrance.NOTHING_TO_UNDO);
        assertThat(execute(() -> desk.actions().command("publish").orElseThrow().hindrance()))
                .contains(Hindrance.NO_CHART_SHOWN);
        robot.pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        robot.waitForIdle();
        assertThat(execute(() -> desk.deck().isStart())).isFalse();
        assertThat(execute(() -> desk.canvas().isFocusOwner())).isTrue();
    }

    /** From the first step on, down to the charts worked on last, and Enter. */
    @Test
    void aChartWorkedOnLastIsOpenedByKeysAndOneThatIsGoneIsTakenOff() {
        Component gone = named(desk, "start.recent2");
        until("the missing chart is found out", () -> execute(() -> texts(gone).contains("Press to take it off")));
        assertThat(execute(() -> named(desk, "start.new").isFocusOwner())).isTrue();
        press(KeyEvent.VK_DOWN, KeyEvent.VK_RIGHT, KeyEvent.VK_ENTER);
        assertThat(execute(() -> WindowParts.parts(desk).stream()
                        .map(Component::getName)
                        .filter(name -> name != null && name.matches("start.recent\\d"))
                        .toList()))
                .containsExactly("start.recent1");

        press(KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        until("the chart is open", () -> execute(() -> desk.bench().file()).isPresent());
        assertThat(execute(() -> desk.bench().file())).contains(kept);
        assertThat(titleOnDesk()).isEqualTo("Mud Ripple");
    }

    @Test
    void atTheSmallestSizeNothingIsCutOffToTheRightAndNoTitleIsShortened() {
        until(
                "all is drawn",
                () -> execute(() -> WindowParts.parts((Container) named(desk, "startPage")).stream()
                        .noneMatch(part ->
                                part instanceof JLabel label && label.getText().endsWith("unfinished"))));
        List<String> cut = new ArrayList<>();
        execute(() -> {
            for (Component part : WindowParts.parts((Container) named(desk, "startPage"))) {
                Rectangle at = SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), desk);
                boolean shortened = part instanceof JLabel label && label.getPreferredSize().width > label.getWidth();
                if (at.x < 0 || at.x + at.width > desk.getWidth() || shortened) {
                    cut.add(part.getName() + " " + at + (part instanceof JLabel label ? label.getText() : ""));
                }
            }
        });
        assertThat(cut).isEmpty();
    }

    private String titleOnDesk() {
        return execute(() -> desk.bench().chart().title());
    }

    private void press(int... keys) {
        for (int key : keys) {
            robot.pressAndReleaseKey(key);
            robot.waitForIdle();
        }
    }

    private static List<String> texts(Component of) {
        return WindowParts.parts((Container) of).stream()
                .filter(JLabel.class::isInstance)
                .map(label -> ((JLabel) label).getText())
                .toList();
    }
}
