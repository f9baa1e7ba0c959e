package edgewright.desk;

import static edgewright.desk.WindowParts.cell;
import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.onScreen;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.desk.parts.Look;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.texts.Language;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JList;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Somebody works on a small screen in a language that English knows nothing of, and whose words are longer. */
class InventedLanguageWindowTest {
    private static final Place HERE = new Place(3, Section.REPEAT, 2);

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    @Tag("journey")
    @Test
    void aStitchIsDrawnToldOfUndoneAndDoneAgainByTheSearchOfCommands() {
        Language language = LongLanguage.make();
        Robot robot = display.robot();
        DeskFrame desk = execute(() -> {
            Look.setUp(Theme.LIGHT);
            DeskFrame frame =
                    new DeskFrame(Desk.blank(language), new Settings(folder.resolve("desk.properties")), language);
            frame.setSize(1024, 700);
            frame.setVisible(true);
            return frame;
        });
        display.putAwayLater(desk);
        // Where a stitch lies is known once the window has the keys, and so its place.
        robot.waitForIdle();
        robot.focusAndWaitForFocusGain(desk.canvas());
        Chart before = execute(() -> desk.bench().chart());
        robot.click(onScreen(desk, cell(desk, HERE)), MouseButton.LEFT_BUTTON, 1);
        until("the stitch is drawn", () -> execute(() -> desk.bench().chart().stitch(HERE)) == Stitch.LONG);
        Chart drawn = execute(() -> desk.bench().chart());
        JLabel told = (JLabel) named(desk, "stitchAtCursor");
        assertThat(execute(told::getText)).satisfies(InventedLanguageWindowTest::isInvented);
        assertThat(execute(() -> desk.bench().undoName().orElseThrow()))
                .satisfies(InventedLanguageWindowTest::isInvented);
        control(robot, KeyEvent.VK_Z);
        until("it is undone", () -> execute(() -> desk.bench().chart()).equals(before));

        control(robot, KeyEvent.VK_K);
        until(
                "the search is open",
                () -> execute(() -> searches(desk).findFirst().isPresent()));
        java.awt.Window search = execute(() -> searches(desk).findFirst().orElseThrow());
        until("it has the keys", () -> execute(named(search, "commandQuery")::isFocusOwner));
        JList<?> list = (JList<?>) named(search, "commandsFound");
        int all = execute(() -> list.getModel().getSize());
        String redo = language.messages("desk/parts").text("action-redo").replace("&", "");
        assertThat(redo).satisfies(InventedLanguageWindowTest::isInvented);
        execute(() -> ((javax.swing.JTextField) named(search, "commandQuery")).setText(redo));
        until("fewer are found", () -> execute(() -> list.getModel().getSize()) < all);
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        until("it is done again", () -> execute(() -> desk.bench().chart()).equals(drawn));
        assertThat(execute(() -> desk.getSize())).isEqualTo(new java.awt.Dimension(1024, 700));
    }

    private static void isInvented(String text) {
        assertThat(text.chars().anyMatch(letter -> LongLanguage.LETTERS.indexOf(letter) >= 0))
                .as(text)
                .isTrue();
    }

    private static Stream<java.awt.Window> searches(DeskFrame desk) {
        return Stream.of(desk.getOwnedWindows())
                .filter(window -> window.isShowing() && "commandSearch".equals(window.getName()));
    }

    private static void control(Robot robot, int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
    }
}
