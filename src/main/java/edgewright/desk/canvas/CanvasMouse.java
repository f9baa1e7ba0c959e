package edgewright.desk.canvas;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.desk.work.Workbench;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/**
 * The mouse on the chart. The left button works the chosen stitch, the right one takes out; drawn on, both go on with it, and
 * that is one edit. With shift the left button only puts the cursor there, and drawn on marks from there; with alt it takes the
 * stitch up as the chosen one.
 * The middle button moves the chart under the window.
 */
final class CanvasMouse extends MouseAdapter {
    private final ChartCanvas canvas;
    private Optional<Workbench.Stroke> stroke = Optional.empty();
    private Optional<GridCell> markFrom = Optional.empty();
    private Point last = new Point();
    private Point grip = new Point();
    /** What the wheel has turned since its last step, in notches. */
    private double turned;

    CanvasMouse(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    @Override
    public void mousePressed(MouseEvent event) {
        canvas.requestFocusInWindow();
        last = event.getPoint();
        grip = event.getLocationOnScreen();
        if (SwingUtilities.isMiddleMouseButton(event) || stroke.isPresent()) {
            return;
        }
        canvas.marking().clear();
        Optional<Place> at = placeAt(last);
        if (at.isPresent()) {
            canvas.cellAt(last).ifPresent(canvas::standIn);
        }
        boolean left = SwingUtilities.isLeftMouseButton(event);
        if (left && event.isAltDown()) {
            at.ifPresent(place -> canvas.bench().choose(canvas.bench().chart().stitch(place)));
        } else if (left && event.isShiftDown()) {
            markFrom = canvas.cellAt(last);
        } else if (left || SwingUtilities.isRightMouseButton(event)) {
            Workbench.Stroke begun =
                    canvas.bench().beginStroke(left ? canvas.bench().stitch() : Stitch.BACK_LOOP);
            stroke = Optional.of(begun);
            at.ifPresent(place -> begun.over(List.of(place)));
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (SwingUtilities.isMiddleMouseButton(event)) {
            pan(event.getLocationOnScreen());
            return;
        }
        if (markFrom.isPresent()) {
            canvas.cellAt(event.getPoint()).ifPresent(to -> canvas.marking().extend(markFrom.get(), to));
        }
        if (stroke.filter(Workbench.Stroke::isGoing).isPresent()) {
            List<Place> passed = placesBetween(last, event.getPoint());
            canvas.cellAt(event.getPoint())
                    .filter(cell -> placeAt(event.getPoint()).isPresent())
                    .ifPresent(canvas::standInQuietly);
            stroke.get().over(passed);
        }
        last = event.getPoint();
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        stroke.ifPresent(Workbench.Stroke::end);
        stroke = Optional.empty();
        markFrom = Optional.empty();
    }

    /** Takes back what is being drawn, if a button is held; whether there was anything to take back. */
    boolean cancelStroke() {
        boolean going = stroke.filter(Workbench.Stroke::isGoing).isPresent();
        stroke.ifPresent(Workbench.Stroke::cancel);
        return going;
    }

    /** Forgets where marking began: the cells lie otherwise now. */
    void forgetMarking() {
        markFrom = Optional.empty();
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        canvas.hover(canvas.cellAt(event.getPoint()));
    }

    @Override
    public void mouseExited(MouseEvent event) {
        canvas.hover(Optional.empty());
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        if (event.isControlDown() || event.isMetaDown()) {
            zoom(event);
        } else {
            turned = 0;
            // The scroll pane knows what to do with it.
            canvas.getParent().dispatchEvent(SwingUtilities.convertMouseEvent(canvas, event, canvas.getParent()));
        }
    }

    /** A step for each whole notch; a fine wheel or a pad turns by parts of one, which are added up while they go one way. */
    private void zoom(MouseWheelEvent event) {
        double by = event.getPreciseWheelRotation();
        turned = by * turned < 0 ? by : turned + by;
        int steps = (int) turned;
        turned -= steps;
        for (int i = 0; i < Math.abs(steps); i++) {
            // Turned away from the hand is up, and up is in.
            canvas.zoomAt(event.getPoint(), -Integer.signum(steps));
        }
    }

    private void pan(Point to) {
        if (SwingUtilities.getAncestorOfClass(JViewport.class, canvas) instanceof JViewport window) {
            CanvasWindow.drag(window, canvas, to.x - grip.x, to.y - grip.y);
        }
        grip = to;
    }

    private Optional<Place> placeAt(Point point) {
        return canvas.cellAt(point).flatMap(canvas::placeIn);
    }

    /** Every stitch that the hand went over, also where the mouse was faster than its reports. */
    private List<Place> placesBetween(Point from, Point to) {
        int steps = Math.max(1, Math.max(Math.abs(to.x - from.x), Math.abs(to.y - from.y)) * 2 / canvas.cellPx());
        List<Place> passed = new ArrayList<>();
        Optional<GridCell> before = Optional.empty();
        for (int i = 0; i <= steps; i++) {
            Point point = new Point(from.x + (to.x - from.x) * i / steps, from.y + (to.y - from.y) * i / steps);
            Optional<GridCell> cell = canvas.cellAt(point);
            if (!cell.equals(before)) {
                cell.flatMap(canvas::placeIn).ifPresent(passed::add);
            }
            before = cell;
        }
        return passed;
    }
}
