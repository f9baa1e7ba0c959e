package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.nio.file.Path;
import javax.swing.JViewport;
import org.assertj.swing.core.Robot;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** How large the chart is seen, and which part of it. */
class ChartSizeWindowTest {
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
    }

    @Test
    void theWholeChartIsSeenAsTheDeskOpensAndAfterEveryResize() {
        assertWhole("as it opens");
        for (Dimension size :
                new Dimension[] {new Dimension(1_000, 640), new Dimension(1_500, 900), new Dimension(1_100, 760)}) {
            resize(size);
            assertWhole("at " + size);
        }
    }

    @Test
    void aSizeThatWasChosenStaysAtAResize() {
        window.button("zoomIn").click();
        robot.waitForIdle();
        int chosen = cellPx();
        resize(new Dimension(1_000, 640));
        assertThat(cellPx()).isEqualTo(chosen);

        window.button("fit").click();
        robot.waitForIdle();
        assertWhole("asked for again");
        resize(new Dimension(1_400, 900));
        assertWhole("after one more resize");
    }

    @Test
    void anotherWayOfCountingLeavesTheChartWhereItIs() {
        for (int i = 0; i < 6; i++) {
            window.button("zoomIn").click();
        }
        execute(() -> desk.canvas()
                .standAndShow(desk.canvas()
                        .cells()
                        .cellsOf(new Place(1, Section.REPEAT, 1))
                        .get(0)));
        Point away = new Point(0, 0);
        execute(() -> viewport().setViewPosition(away));
        robot.waitForIdle();
        assertThat(execute(() -> desk.canvas().getVisibleRect().contains(cursor())))
                .as("the cursor is out of sight")
                .isFalse();
        window.comboBox("counting").selectItem(1);
        robot.waitForIdle();

        assertThat(execute(() -> viewport().getViewPosition())).isEqualTo(away);
    }

    private Rectangle cursor() {
        return desk.canvas()
                .boundsOf(desk.canvas().cells().cellsOf(desk.bench().cursor()).get(0));
    }

    private void resize(Dimension size) {
        execute(() -> desk.setSize(size));
        robot.waitForIdle();
    }

    /** Nothing of the chart is out of sight, and no larger squares would do. */
    private void assertWhole(String when) {
        until("the whole chart is seen " + when, () -> execute(this::isWhole));
    }

    private boolean isWhole() {
        Dimension needed = desk.canvas().getPreferredSize();
        Dimension there = viewport().getExtentSize();
        int cell = edgePx();
        double across = (needed.width - 20.0) / cell;
        double down = (needed.height - 20.0) / cell;
        boolean larger = across * (cell + 1) + 20 <= there.width && down * (cell + 1) + 20 <= there.height;
        return needed.width <= there.width && needed.height <= there.height && (cell == 40 || !larger);
    }

    private int cellPx() {
        return execute(this::edgePx);
    }

    /** From the beginning of a square to that of the next one. */
    private int edgePx() {
        Rectangle first = desk.canvas().boundsOf(cellOf(1));
        Rectangle second = desk.canvas().boundsOf(cellOf(2));
        return Math.abs(first.x - second.x) + Math.abs(first.y - second.y);
    }

    private GridCell cellOf(int place) {
        return desk.canvas()
                .cells()
                .cellsOf(new Place(1, Section.REPEAT, place))
                .get(0);
    }

    private JViewport viewport() {
        return (JViewport) desk.canvas().getParent();
    }
}
