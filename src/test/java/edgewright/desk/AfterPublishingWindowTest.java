package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.JLabel;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A pattern has been published, and its maker wants to see it. */
class AfterPublishingWindowTest {
    private final List<Path> shown = new CopyOnWriteArrayList<>();

    @TempDir
    private Path folder;

    private Path pattern;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;

    @BeforeEach
    void haveAPatternMade() {
        pattern = folder.resolve("reed-bank.pdf");
        robot = display.robot();
        desk = display.show(folder);
        assertThat(execute(() -> named(desk, "openMade").isVisible())).isFalse();
        execute(() -> desk.made().made(pattern));
        robot.waitForIdle();
    }

    @Test
    void thePatternAndItsFolderAreOpenedFromTheFootOfTheWindow() {
        execute(() -> desk.made().showBy(shown::add));
        robot.click(named(desk, "openMade"));
        until("the pattern is shown", () -> shown.equals(List.of(pattern)));
        until("that is told", () -> !execute(named(desk, "showMade")::isVisible));
        execute(() -> desk.made().made(pattern));
        robot.waitForIdle();
        robot.click(named(desk, "showMade"));
        until("the folder is shown, too", () -> shown.equals(List.of(pattern, folder)));
        Component button = named(desk, "showMade");
        until("it goes with other news", () -> !execute(button::isVisible));
    }

    @Test
    void whereTheMachineShowsNoFilesThePathIsOnTheClipboard() throws Exception {
        execute(() -> desk.made().showBy(file -> {
            throw new IOException("nothing shows files here");
        }));
        robot.click(named(desk, "openMade"));
        until(
                "it is said",
                () -> execute(() -> ((JLabel) named(desk, "news")).getText())
                        .equals("No program of this machine shows it. Its path is on the clipboard: " + pattern));
        assertThat(Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor))
                .isEqualTo(pattern.toString());
    }
}
