package edgewright.desk;

import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.texts.English;
import java.awt.AWTException;
import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.core.Settings;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The display of a test, with mouse and keys, and the desks that it shows: put away after each test, whatever became of it.
 *
 * <p>Every press and move is over only when the window has worked it off, so nothing waits for a time, and what follows it can be
 * looked at at once. Swing that is touched off the event thread fails the test.
 */
public final class DeskOnDisplay implements BeforeEachCallback, AfterEachCallback {
    private final List<DeskFrame> shown = new ArrayList<>();
    private Robot robot;

    @Override
    public void beforeEach(ExtensionContext context) throws ReflectiveOperationException {
        FailOnThreadViolationRepaintManager.install();
        robot = BasicRobot.robotWithNewAwtHierarchy();
        robot.settings().delayBetweenEvents(0);
        robot.settings().eventPostingDelay(0);
        // AssertJ hands the robot below its own out to nobody, and waits for a time instead.
        Field below = Settings.class.getDeclaredField("robot");
        below.setAccessible(true);
        ((java.awt.Robot) below.get(robot.settings())).setAutoWaitForIdle(true);
    }

    @Override
    public void afterEach(ExtensionContext context) {
        execute(() -> Thread.currentThread().setUncaughtExceptionHandler(null));
        execute(() -> shown.forEach(DeskFrame::dispose));
        robot.cleanUp();
    }

    /** Mouse and keys. */
    public Robot robot() {
        return robot;
    }

    /** Presses a key many times, as fast as it can be: the window works the presses off afterwards. */
    public void press(int key, int times) {
        try {
            java.awt.Robot quick = new java.awt.Robot();
            for (int i = 0; i < times; i++) {
                quick.keyPress(key);
                quick.keyRelease(key);
            }
            quick.waitForIdle();
        } catch (AWTException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A new chart on a desk that keeps its settings in a folder, shown. */
    public DeskFrame show(Path folder) {
        return show(Desk.blank(English.LANGUAGE), folder);
    }

    /** A chart on a desk that keeps its settings in a folder, shown. */
    public DeskFrame show(Chart chart, Path folder) {
        DeskFrame desk = WindowParts.desk(chart, folder);
        putAwayLater(desk);
        new FrameFixture(robot, desk).show(WindowParts.SIZE);
        robot.waitForIdle();
        return desk;
    }

    /** Has a desk that the test made by itself put away after the test. */
    public void putAwayLater(DeskFrame desk) {
        shown.add(desk);
    }
}
