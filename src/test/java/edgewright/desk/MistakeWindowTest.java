package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.texts.English;
import java.awt.Graphics;
import java.awt.Window;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JComponent;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A mistake in the program is told of so that somebody can go on with the work. */
class MistakeWindowTest {
    @TempDir
    private Path folder;

    private Robot robot;
    private DeskFrame desk;
    private FrameFixture window;

    @BeforeEach
    void openTheDesk() {
        robot = BasicRobot.robotWithCurrentAwtHierarchy();
        desk = WindowParts.desk(Desk.blank(English.LANGUAGE), folder);
        window = new FrameFixture(robot, desk);
        window.show(WindowParts.SIZE);
        robot.waitForIdle();
        execute(() -> Thread.currentThread().setUncaughtExceptionHandler((thread, problem) -> desk.tellOf(problem)));
    }

    @AfterEach
    void putAway() {
        execute(() -> Thread.currentThread().setUncaughtExceptionHandler(null));
        execute(() -> desk.dispose());
        robot.cleanUp();
    }

    @Test
    void aMistakeInPaintingIsToldOfOnceAndThenInTheStatusLineOnly() {
        AtomicInteger painted = new AtomicInteger();
        JComponent broken = new JComponent() {
            @Override
            protected void paintComponent(Graphics graphics) {
                painted.incrementAndGet();
                throw new IllegalStateException("cannot be painted");
            }
        };
        execute(() -> {
            broken.setBounds(0, 0, 400, 400);
            desk.getLayeredPane().add(broken, Integer.valueOf(1));
            broken.repaint();
        });
        JOptionPaneFinder.findOptionPane()
                .withTimeout(30_000)
                .using(robot)
                .button(JButtonMatcher.withName("answer1"))
                .click();
        int told = painted.get();
        until("it is painted again", () -> {
            execute(() -> broken.repaint());
            robot.waitForIdle();
            return painted.get() > told + 2;
        });

        assertThat(execute(() -> desk.getOwnedWindows())).noneMatch(Window::isShowing);
        assertThat(window.label("news").text())
                .isEqualTo("The same mistake in the program was met again. Save the chart.");
    }
}
