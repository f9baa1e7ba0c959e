package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The words of others, pasted and read with mouse and keys as a designer does. */
class ReadingWindowTest {
    private static final Path DRAWER = Path.of("src", "test", "resources", "edgewright", "words", "drawer");

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private Container reading;

    @BeforeEach
    void open() {
        robot = display.robot();
        desk = display.show(folder);
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_R);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        until(
                "the window is there",
                () -> execute(() -> Stream.of(desk.getOwnedWindows()).anyMatch(Window::isShowing)));
        reading = execute(() -> Stream.of(desk.getOwnedWindows())
                .filter(window -> "readingWindow".equals(window.getName()))
                .findFirst()
                .orElseThrow());
        robot.waitForIdle();
    }

    @Test
    void anEmptyWindowSaysWhatCanBeDoneInIt() {
        assertThat(said("reading.outcome")).startsWith("Paste a pattern text at the left, or open one");
        assertThat(enabled("reading.draw")).isFalse();
        assertThat(enabled("reading.compare")).isFalse();
    }

    @Test
    void aChosenLineShowsItsRoundAndTheTextIsDrawnAndCompared() throws IOException {
        pasteAndRead("pocket-reed-fence.txt");
        until("it is understood", () -> enabled("reading.draw"));
        assertThat(said("reading.outcome")).startsWith("8 rounds are understood.");

        click(lineWith("R3 A"));
        assertThat(heard("reading.picture")).isEqualTo("Round 3 of the chart that the text makes, framed");
        robot.pressAndReleaseKeys(KeyEvent.VK_DOWN);
        robot.waitForIdle();
        assertThat(heard("reading.picture")).startsWith("Round 4 of");
        click(lineWith("4s + 3"));
        assertThat(heard("reading.picture")).startsWith("The chart that the text makes: FENCE");

        click(named(reading, "reading.compare"));
        until("it is compared", () -> said("reading.outcome").contains("does not come out even on sides"));
        click(named(reading, "reading.draw"));
        until(
                "it lies on the desk",
                () -> execute(() -> desk.bench().chart().rounds().size()) == 8);
        assertThat(execute(() -> desk.bench().chart().title())).startsWith("FENCE");
        click(named(reading, "reading.compare"));
        until("it is the same", () -> said("reading.outcome").endsWith("stitch by stitch."));
    }

    @Test
    void aTextThatDoesNotSayItsTermsAsksWithWhatComesOfEither() throws IOException {
        pasteAndRead("magazine-bell-rope-terms.txt");
        until("it asks", () -> execute(() -> named(reading, "reading.question").isShowing()));
        assertThat(enabled("reading.draw")).isFalse();
        assertThat(said("reading.consequence.UK")).isNotEqualTo(said("reading.consequence.US"));
        click(named(reading, "reading.terms.UK"));
        until(
                "the question is answered",
                () -> execute(() -> !named(reading, "reading.question").isShowing()));
        assertThat(said("reading.outcome")).doesNotContain("can be read in two ways");
    }

    @Test
    void whatIsNotUnderstoodIsToldWithItsPlace() throws IOException {
        pasteAndRead("postcard-standing-reeds-undefined.txt");
        until("it is refused", () -> said("reading.outcome").startsWith("line "));
        assertThat(said("reading.outcome")).contains("column").contains("expected");
        assertThat(enabled("reading.draw")).isFalse();
    }

    private void pasteAndRead(String name) throws IOException {
        StringSelection words = new StringSelection(Files.readString(DRAWER.resolve(name)));
        execute(() -> Toolkit.getDefaultToolkit().getSystemClipboard().setContents(words, null));
        click(named(reading, "reading.text"));
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(KeyEvent.VK_V);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        until("it is pasted", () -> !said("reading.text").isEmpty());
        click(named(reading, "reading.read"));
    }

    private void click(Component component) {
        Point middle = execute(() -> {
            Point at = component.getLocationOnScreen();
            at.translate(component.getWidth() / 2, Math.min(component.getHeight() / 2, 60));
            return at;
        });
        click(middle);
    }

    private void click(Point at) {
        robot.click(at, MouseButton.LEFT_BUTTON, 1);
        robot.waitForIdle();
    }

    /** A point on the line of the text that begins like this. */
    private Point lineWith(String beginning) {
        return execute(() -> {
            JTable lines = (JTable) named(reading, "reading.lines");
            int row = IntStream.range(0, lines.getRowCount())
                    .filter(each -> String.valueOf(lines.getValueAt(each, 1)).startsWith(beginning))
                    .findFirst()
                    .orElseThrow();
            lines.scrollRectToVisible(lines.getCellRect(row, 1, true));
            Rectangle cell = lines.getCellRect(row, 1, true);
            Point at = lines.getLocationOnScreen();
            at.translate((int) cell.getCenterX(), (int) cell.getCenterY());
            return at;
        });
    }

    private String said(String name) {
        return execute(() -> ((JTextComponent) named(reading, name)).getText());
    }

    private boolean enabled(String name) {
        return execute(() -> named(reading, name).isEnabled());
    }

    private String heard(String name) {
        return execute(() -> named(reading, name).getAccessibleContext().getAccessibleName());
    }
}
