package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.booklet.PageText;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a new chart to its printable pattern: by the mouse alone, and by the keys alone. Every press and click is counted. */
class NewToPdfWindowTest {
    private static final Place LONG = new Place(3, Section.REPEAT, 2);

    @TempDir
    private Path folder;

    private Robot robot;
    private DeskFrame desk;
    private FrameFixture window;
    private int steps;

    @BeforeEach
    void open() {
        robot = BasicRobot.robotWithCurrentAwtHierarchy();
        desk = WindowParts.shownDesk(folder);
        window = new FrameFixture(robot, desk);
        window.show(WindowParts.SIZE);
        execute(() -> desk.bench().choose(Stitch.LONG));
    }

    @AfterEach
    void putAway() {
        execute(() -> desk.dispose());
        robot.cleanUp();
    }

    @Test
    void byTheMouseAlone() throws Exception {
        menu("menu.new");
        click(named(dialog("newChart"), "accept"));
        until("it is begun", () -> news().startsWith("New chart"));
        robot.click(WindowParts.onScreen(desk, WindowParts.cell(desk, LONG)), MouseButton.LEFT_BUTTON, 1);
        steps++;
        until("it is drawn", () -> execute(() -> desk.bench().chart().stitch(LONG)) == Stitch.LONG);
        menu("menu.publish");
        click(named(dialog("publish"), "accept"));
        JFileChooser chooser = chooser();
        execute(() -> chooser.setSelectedFile(folder.resolve("mouse.pdf").toFile()));
        click(execute(() -> WindowParts.parts(chooser).stream()
                .filter(part -> part instanceof JButton button && "Save".equals(button.getText()))
                .findFirst()
                .orElseThrow()));
        isPublished("mouse.pdf");
        assertThat(steps).isEqualTo(8);
    }

    @Test
    void byTheKeysAlone() throws Exception {
        robot.focusAndWaitForFocusGain(desk.canvas());
        control(KeyEvent.VK_N);
        dialog("newChart");
        press(KeyEvent.VK_ENTER);
        until("it is begun", () -> news().startsWith("New chart"));
        until("the keys go to the chart", () -> execute(() -> desk.canvas().isFocusOwner()));
        press(KeyEvent.VK_UP);
        press(KeyEvent.VK_UP);
        press(KeyEvent.VK_L);
        until("it is drawn", () -> execute(() -> desk.bench().hasUnsavedWork()));
        control(KeyEvent.VK_E);
        dialog("publish");
        press(KeyEvent.VK_ENTER);
        chooser();
        until("the name can be typed", () -> focused() instanceof JTextComponent);
        int withoutTyping = steps;
        control(KeyEvent.VK_A);
        robot.enterText(folder.resolve("keys.pdf").toString());
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        isPublished("keys.pdf");
        assertThat(withoutTyping + 1).isEqualTo(8);
    }

    private void isPublished(String file) throws Exception {
        until("it is published", () -> news().startsWith("Published " + file));
        try (PDDocument pattern = Loader.loadPDF(folder.resolve(file).toFile())) {
            assertThat(new PageText().getText(pattern)).contains("New border", "Round 3 (Peat)", "drop tr");
        }
    }

    private void menu(String item) {
        window.menuItem(item).click();
        // The menu itself, and its line.
        steps += 2;
    }

    private void click(Component part) {
        robot.click(part);
        steps++;
    }

    private void press(int key) {
        robot.pressAndReleaseKey(key);
        steps++;
    }

    private void control(int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKey(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        steps++;
    }

    private String news() {
        return execute(() -> ((JLabel) named(desk, "news")).getText());
    }

    private static Component focused() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private static Window dialog(String name) {
        until(name + " is open", () -> execute(() -> showing().anyMatch(shown -> name.equals(shown.getName()))));
        return execute(() -> showing()
                .filter(shown -> name.equals(shown.getName()))
                .findFirst()
                .orElseThrow());
    }

    private static Stream<Window> showing() {
        return Stream.of(Window.getWindows()).filter(shown -> shown.isShowing() && shown.isFocused());
    }

    private static JFileChooser chooser() {
        until("a file is asked for", () -> execute(() -> choosers().findFirst().isPresent()));
        return execute(() -> choosers().findFirst().orElseThrow());
    }

    private static Stream<JFileChooser> choosers() {
        return showing()
                .flatMap(shown -> WindowParts.parts(shown).stream())
                .filter(JFileChooser.class::isInstance)
                .map(JFileChooser.class::cast);
    }
}
