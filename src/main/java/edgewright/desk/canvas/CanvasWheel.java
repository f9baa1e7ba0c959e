package edgewright.desk.canvas;

import java.awt.event.MouseWheelEvent;
import java.awt.event.MouseWheelListener;
import javax.swing.SwingUtilities;

/**
 * The wheel over the chart: with Ctrl it zooms to what lies under the mouse, else it scrolls. A pad that is pinched comes as
 * a fine wheel with Ctrl wherever the system says anything of it; AWT has no other word for it.
 */
final class CanvasWheel implements MouseWheelListener {
    /** By how much a whole notch makes the squares larger. */
    private static final double NOTCH = 1.15;

    private final ChartCanvas canvas;

    CanvasWheel(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        if (event.isControlDown() || event.isMetaDown()) {
            // Turned away from the hand is up, and up is in.
            canvas.zoom().zoomBy(event.getPoint(), Math.pow(NOTCH, -event.getPreciseWheelRotation()));
        } else {
            // The scroll pane knows what to do with it.
            canvas.getParent().dispatchEvent(SwingUtilities.convertMouseEvent(canvas, event, canvas.getParent()));
        }
    }
}
