package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Stitch;
import edgewright.desk.tool.Tool;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/**
 * The mouse on the chart. The left button uses the tool in the hand with the chosen stitch, the right one takes out; drawn on,
 * both go on with it, and that is one edit. With shift the left button marks from there, whatever the tool; with alt it takes the
 * stitch up as the chosen one; with control what is lifted also stays where it is.
 * The middle button moves the chart under the window.
 */
final class CanvasMouse extends MouseAdapter {
    private final ChartCanvas canvas;
    /** Whether a button is held that has put the tool down; a second one does nothing meanwhile. */
    private boolean held;

    private Point last = new Point();
    private Point grip = new Point();

    CanvasMouse(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    @Override
    public void mousePressed(MouseEvent event) {
        canvas.requestFocusInWindow();
        last = event.getPoint();
        grip = event.getLocationOnScreen();
        if (SwingUtilities.isMiddleMouseButton(event) || held) {
            return;
        }
        Optional<GridCell> cell =
                canvas.cellAt(last).filter(at -> canvas.placeIn(at).isPresent());
        boolean left = SwingUtilities.isLeftMouseButton(event);
        held = left || SwingUtilities.isRightMouseButton(event);
        if (cell.isEmpty()) {
            canvas.tools().up();
            canvas.marking().clear();
        } else if (left && event.isAltDown()) {
            canvas.standIn(cell.get());
            canvas.bench().choose(canvas.bench().chart().stitch(canvas.bench().cursor()));
        } else if (left && event.isShiftDown()) {
            canvas.tools().up();
            canvas.marking().clear();
            canvas.standIn(cell.get());
            canvas.tools().markFrom(cell.get());
        } else if (!left && canvas.toolbox().tool().use() != Tool.Use.WORK) {
            // A tool that works nothing takes nothing out.
            canvas.tools().up();
            canvas.marking().clear();
            canvas.standIn(cell.get());
        } else if (held) {
            canvas.standIn(cell.get());
            canvas.tools().down(cell.get(), left ? canvas.bench().stitch() : Stitch.BACK_LOOP, event.isControlDown());
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (SwingUtilities.isMiddleMouseButton(event)) {
            pan(event.getLocationOnScreen());
            return;
        }
        if (canvas.tools().isBusy()) {
            List<GridCell> passed = cellsBetween(last, event.getPoint());
            if (!passed.isEmpty()) {
                canvas.standInQuietly(passed.get(passed.size() - 1));
                canvas.tools().over(passed);
            }
        }
        last = event.getPoint();
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (held) {
            held = false;
            canvas.tools().up();
            canvas.ghost().hover(canvas.cellAt(event.getPoint()));
            canvas.ghost().follow();
        }
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        canvas.ghost().hover(canvas.cellAt(event.getPoint()));
    }

    @Override
    public void mouseExited(MouseEvent event) {
        canvas.ghost().hover(Optional.empty());
    }

    private void pan(Point to) {
        if (SwingUtilities.getAncestorOfClass(JViewport.class, canvas) instanceof JViewport window) {
            CanvasWindow.drag(window, canvas, to.x - grip.x, to.y - grip.y);
        }
        grip = to;
    }

    /** Every cell with a stitch that the hand went over, also where the mouse was faster than its reports. */
    private List<GridCell> cellsBetween(Point from, Point to) {
        int steps = Math.max(1, Math.max(Math.abs(to.x - from.x), Math.abs(to.y - from.y)) * 2 / canvas.cellPx());
        List<GridCell> passed = new ArrayList<>();
        Optional<GridCell> before = Optional.empty();
        for (int i = 0; i <= steps; i++) {
            Point point = new Point(from.x + (to.x - from.x) * i / steps, from.y + (to.y - from.y) * i / steps);
            Optional<GridCell> cell = canvas.cellAt(point);
            if (!cell.equals(before)) {
                cell.filter(of -> canvas.placeIn(of).isPresent()).ifPresent(passed::add);
            }
            before = cell;
        }
        return passed;
    }
}
