package edgewright.desk;

import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.texts.English;
import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Frame;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.AWTEventListener;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.WeakHashMap;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.core.Settings;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Pause;
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
    /** As long as a window manager may take to give a window its place and the keys; some never get them. */
    private static final int PLACED_TRIES = 200;

    private final List<DeskFrame> shown = new ArrayList<>();
    private final Set<Window> placed = Collections.newSetFromMap(new WeakHashMap<>());
    private final AWTEventListener onFocus = event -> placed.add((Window) event.getSource());
    private Robot robot;

    @Override
    public void beforeEach(ExtensionContext context) throws ReflectiveOperationException {
        FailOnThreadViolationRepaintManager.install();
        execute(() -> Toolkit.getDefaultToolkit().addAWTEventListener(onFocus, AWTEvent.WINDOW_FOCUS_EVENT_MASK));
        robot = BasicRobot.robotWithNewAwtHierarchy();
        robot.settings().delayBetweenEvents(0);
        robot.settings().eventPostingDelay(0);
        // AssertJ hands the robot below its own out to nobody, and waits for a time instead.
        Field below = Settings.class.getDeclaredField("robot");
        below.setAccessible(true);
        ((java.awt.Robot) below.get(robot.settings())).setAutoWaitForIdle(true);
        robot = inPlace(robot);
        // Where the test before has left the mouse, a tip may come up over what this one looks at.
        robot.moveMouse(new Point(0, 0));
    }

    /** A robot that points at no part before the window manager has put its window in its place, and so given it the keys. */
    private Robot inPlace(Robot below) {
        return (Robot) Proxy.newProxyInstance(
                Robot.class.getClassLoader(), new Class<?>[] {Robot.class}, (proxy, method, given) -> {
                    boolean points = method.getName().matches("click|doubleClick|rightClick|moveMouse|pressMouse");
                    if (points && given[0] instanceof Component part) {
                        waitForPlace(part);
                    }
                    try {
                        return method.invoke(below, given);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
    }

    /** Waits until the window of a part has its place and has had the keys, for a while at most: some never get them. */
    public void waitForPlace(Component part) {
        Window window = part instanceof Window itself ? itself : SwingUtilities.getWindowAncestor(part);
        if (window instanceof Frame || window instanceof Dialog) {
            for (int i = 0; i < PLACED_TRIES && !execute(() -> placed.contains(window)); i++) {
                Pause.pause();
            }
        }
    }

    @Override
    public void afterEach(ExtensionContext context) {
        execute(() -> Thread.currentThread().setUncaughtExceptionHandler(null));
        execute(() -> shown.forEach(DeskFrame::dispose));
        execute(() -> Toolkit.getDefaultToolkit().removeAWTEventListener(onFocus));
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
