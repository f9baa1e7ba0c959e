package edgewright.desk.canvas;

import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;

/** The rulers along two edges of the window in which the chart is seen; they go with it, and stay as it is scrolled. */
final class CanvasRulers {
    private final ChartCanvas canvas;
    private final CanvasRuler beside;
    private final CanvasRuler above;

    CanvasRulers(ChartCanvas canvas) {
        this.canvas = canvas;
        beside = new CanvasRuler(canvas, true);
        above = new CanvasRuler(canvas, false);
    }

    /** Lies down in the scroll pane of the canvas, if it is in one. */
    void attach() {
        if (SwingUtilities.getAncestorOfClass(JScrollPane.class, canvas) instanceof JScrollPane pane) {
            pane.setRowHeaderView(beside);
            pane.setColumnHeaderView(above);
            JPanel corner = new JPanel();
            pane.setCorner(ScrollPaneConstants.UPPER_LEADING_CORNER, corner);
        }
    }

    /** What is read there may be otherwise now. */
    void follow() {
        beside.follow();
        above.follow();
    }
}
