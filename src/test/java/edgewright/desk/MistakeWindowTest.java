package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import java.awt.Graphics;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.assertj.swing.core.Robot;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A mistake in the program is told of so that somebody can go on with the work. */
class MistakeWindowTest {
    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private FrameFixture window;

    @BeforeEach
    void openTheDesk() {
        robot = display.robot();
        desk = display.show(folder);
        window = new FrameFixture(robot, desk);
        execute(() -> Thread.currentThread().setUncaughtExceptionHandler((thread, problem) -> desk.tellOf(problem)));
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
        JButton understood = JOptionPaneFinder.findOptionPane()
                .withTimeout(30_000)
                .using(robot)
                .button(JButtonMatcher.withName("answer1"))
                .target();
        until("the answer has the keys", () -> execute(understood::isFocusOwner));
        robot.pressAndReleaseKey(KeyEvent.VK_SPACE);
        int told = painted.get();
        until("it is painted again", () -> {
            execute(() -> broken.repaint());
            robot.waitForIdle();
            return painted.get() > told + 2;
        });

        until(
                "nothing is told in a window",
                () -> execute(() -> Stream.of(desk.getOwnedWindows()).noneMatch(Window::isShowing)));
        assertThat(window.label("news").text())
                .isEqualTo("The same mistake in the program was met again. Save the chart.");
    }
}
