package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.desk.work.ChartView;
import edgewright.texts.English;
import java.awt.Point;
import java.awt.Rectangle;
import java.nio.file.Path;
import javax.swing.AbstractButton;
import javax.swing.JSplitPane;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The desk is found on the next day as it was left. */
class MemoryWindowTest {
    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;

    @BeforeEach
    void begin() {
        robot = display.robot();
    }

    @Test
    void placeSplitsLayersAndSizeAreThereTheNextDay() {
        DeskFrame desk = shown();
        execute(() -> desk.setBounds(60, 50, 1240, 760));
        until("it is laid out", () -> execute(() -> desk.getRootPane().getWidth() > 1200));
        Rectangle place = execute(() -> desk.getBounds());
        JSplitPane split = (JSplitPane) named(desk, "deskSplit");
        // In the middle of the divider is the arrow that folds.
        Point from = execute(() -> new Point(split.getDividerLocation() + 3, split.getHeight() / 4));
        robot.pressMouse(split, from, MouseButton.LEFT_BUTTON);
        robot.moveMouse(split, new Point(from.x - 20, from.y));
        robot.moveMouse(split, new Point(from.x - 40, from.y));
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
        int width = execute(() -> split.getDividerLocation());
        assertThat(width).isLessThan(from.x - 20);
        AbstractButton fabric = (AbstractButton) named(desk, "layers.FABRIC");
        AbstractButton larger = (AbstractButton) named(desk, "zoomIn");
        execute(() -> {
            fabric.doClick();
            larger.doClick();
        });
        int cell = execute(() -> desk.document().view().cellPx());
        execute(() -> desk.dispose());

        DeskFrame nextDay = shown();
        assertThat(execute(() -> nextDay.getBounds())).isEqualTo(place);
        JSplitPane again = (JSplitPane) named(nextDay, "deskSplit");
        until("the panes are as wide", () -> execute(() -> again.getDividerLocation()) == width);
        assertThat(execute(() -> nextDay.document().view().layers())).isEqualTo(ChartView.Layers.FABRIC);
        assertThat(execute(() -> nextDay.document().view().cellPx())).isEqualTo(cell);
        execute(() -> nextDay.dispose());
    }

    private DeskFrame shown() {
        DeskFrame desk = WindowParts.desk(Desk.blank(English.LANGUAGE), folder);
        execute(() -> desk.setVisible(true));
        robot.waitForIdle();
        return desk;
    }
}
