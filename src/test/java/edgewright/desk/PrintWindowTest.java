package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.testing.PaperPrinter;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.print.PrintService;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaSizeName;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pattern is looked at and printed, by the keys alone. */
class PrintWindowTest {
    @TempDir
    private Path folder;

    private final PaperPrinter paper = new PaperPrinter();
    private final List<MediaSizeName> asked = new ArrayList<>();
    private Robot robot;
    private DeskFrame desk;

    @BeforeEach
    void open() {
        robot = BasicRobot.robotWithCurrentAwtHierarchy();
        desk = WindowParts.shownDesk(folder);
        robot.focusAndWaitForFocusGain(desk.canvas());
    }

    @AfterEach
    void putAway() {
        execute(() -> desk.dispose());
        robot.cleanUp();
    }

    @Test
    void thePagesAreShownThenThePlatformAsksAndThePrinterHasThem() {
        execute(() -> desk.printers().printBy(paper::services, (job, choice) -> {
            asked.add((MediaSizeName) choice.get(Media.class));
            return true;
        }));
        press(KeyEvent.VK_P);
        DialogFixture pages = dialog("print");
        until("the pages are there", () -> pages.label("preview.where").text().startsWith("Page 1 of "));
        int shown = Integer.parseInt(pages.label("preview.where").text().replaceAll("Page 1 of (\\d+).*", "$1"));
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        until("it is said", () -> news().endsWith("is with the printer."));
        assertThat(asked).containsExactly(MediaSizeName.ISO_A4);
        assertThat(paper.pages()).isEqualTo(shown);
    }

    @Test
    void whoeverTurnsBackAtThePlatformsDialogHasNothingPrinted() {
        execute(() -> desk.printers().printBy(paper::services, (job, choice) -> {
            asked.add(MediaSizeName.ISO_A4);
            return false;
        }));
        press(KeyEvent.VK_P);
        dialog("print");
        robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
        until("the platform has asked", () -> execute(() -> asked.size() == 1));
        assertThat(paper.pages()).isZero();
    }

    @Test
    void whereThereIsNoPrinterThatIsSaidInOneSentence() {
        execute(() -> desk.printers().printBy(() -> new PrintService[0], (job, choice) -> true));
        press(KeyEvent.VK_P);
        DialogFixture told = dialog("news.noPrinter");
        assertThat(execute(() -> ((JTextComponent) named(told.target(), "message")).getText()))
                .isEqualTo("This machine has no printer: publish the pattern instead, and print the file elsewhere.");
        robot.pressAndReleaseKey(KeyEvent.VK_ESCAPE);
    }

    private void press(int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKey(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
    }

    private String news() {
        return execute(() -> ((JLabel) named(desk, "news")).getText());
    }

    private DialogFixture dialog(String name) {
        return WindowFinder.findDialog(name).withTimeout(20_000).using(robot);
    }
}
