package edgewright.desk;

import static edgewright.desk.WindowParts.until;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Edits;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import java.awt.AWTException;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JViewport;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Only what has changed is painted again; so what is seen after all that was done must be what a whole painting shows. */
class CanvasPaintWindowTest {
    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;

    @BeforeEach
    void openTheSample() {
        robot = display.robot();
        ReadResult.Read read = (ReadResult.Read) ChartFiles.read(Path.of("sample-charts", "lantern-posts.border.json"));
        desk = display.show(read.chart(), folder);
        execute(() -> {
            desk.canvas().fit();
            desk.canvas().requestFocusInWindow();
        });
        robot.waitForIdle();
    }

    @Test
    void theCursorLeavesNoTrace() throws AWTException {
        robot.pressAndReleaseKeys(KeyEvent.VK_UP, KeyEvent.VK_UP, KeyEvent.VK_LEFT, KeyEvent.VK_LEFT);
        assertSeenAsPainted("after steps");
        execute(() -> desk.canvas().standAndShow(cell(new Place(5, Section.FROM_CORNER, 2))));
        assertSeenAsPainted("on the other arm");
        execute(() -> desk.bench().moveCursor(new Place(7, Section.REPEAT, 2)));
        assertSeenAsPainted("sent by another pane");
    }

    @Test
    void stitchesThatAreWorkedAndUndoneLeaveNoTrace() throws AWTException {
        robot.pressAndReleaseKeys(KeyEvent.VK_L, KeyEvent.VK_L, KeyEvent.VK_UP, KeyEvent.VK_P, KeyEvent.VK_BACK_SPACE);
        assertSeenAsPainted("after stitches");
        execute(() -> desk.bench().work(List.of(new Place(3, Section.REPEAT, 1)), Stitch.CHAIN));
        assertSeenAsPainted("after a stitch elsewhere");
        execute(() -> {
            desk.bench().undo();
            desk.bench().undo();
        });
        assertSeenAsPainted("after undoing");
        execute(() -> desk.bench().edit("a round more", chart -> Edits.insertRounds(chart, 2, List.of("A"))));
        assertSeenAsPainted("after a round more");
    }

    @Test
    void whatWasMarkedLeavesNoTrace() throws AWTException {
        execute(() -> desk.canvas()
                .marking()
                .extend(cell(new Place(2, Section.REPEAT, 1)), cell(new Place(6, Section.TO_CORNER, 3))));
        assertSeenAsPainted("while marked");
        execute(() -> desk.canvas().marking().clear());
        assertSeenAsPainted("when let go");
    }

    private GridCell cell(Place place) {
        return desk.canvas().cells().cellsOf(place).get(0);
    }

    /** A large chart is painted bit by bit, so it is looked at until it is there. */
    private void assertSeenAsPainted(String when) throws AWTException {
        robot.waitForIdle();
        java.awt.Robot eye = new java.awt.Robot();
        until("the chart is seen as it is painted " + when, () -> otherwise(eye) == 0);
    }

    /** How many pixels are seen otherwise than a whole painting has them. */
    private int otherwise(java.awt.Robot eye) {
        Rectangle visible = execute(() -> {
            Rectangle shown = desk.canvas().getVisibleRect();
            Point at = ((JViewport) desk.canvas().getParent()).getLocationOnScreen();
            shown.setLocation(at);
            return shown;
        });
        BufferedImage painted = execute(() -> {
            Rectangle shown = desk.canvas().getVisibleRect();
            BufferedImage image = new BufferedImage(shown.width, shown.height, BufferedImage.TYPE_INT_RGB);
            java.awt.Graphics2D g = image.createGraphics();
            g.translate(-shown.x, -shown.y);
            desk.canvas().print(g);
            g.dispose();
            return image;
        });
        BufferedImage seen = eye.createScreenCapture(visible);
        int otherwise = 0;
        for (int y = 0; y < seen.getHeight(); y++) {
            for (int x = 0; x < seen.getWidth(); x++) {
                otherwise += isFar(seen.getRGB(x, y), painted.getRGB(x, y)) ? 1 : 0;
            }
        }
        return otherwise;
    }

    /** Edges may be smoothed a little otherwise where only a part is painted. */
    private static boolean isFar(int one, int other) {
        int apart = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            apart = Math.max(apart, Math.abs((one >> shift & 0xff) - (other >> shift & 0xff)));
        }
        return apart > 40;
    }
}
