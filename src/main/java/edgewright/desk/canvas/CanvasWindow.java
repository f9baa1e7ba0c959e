package edgewright.desk.canvas;

import java.awt.Dimension;
import java.awt.Point;
import javax.swing.JComponent;
import javax.swing.JViewport;

/** The window through which a part of the canvas is seen. */
final class CanvasWindow {
    private CanvasWindow() {}

    /** The largest cell, in pixels, with which so many cells each way fit into the window with a margin round them. */
    static int fittingCellPx(JViewport window, double cellsAcross, double cellsDown, int marginPx, int mostPx) {
        double across = (window.getWidth() - 2.0 * marginPx) / cellsAcross;
        double down = (window.getHeight() - 2.0 * marginPx) / cellsDown;
        return (int) Math.max(1, Math.min(mostPx, Math.min(across, down)));
    }

    /** Moves the window so that a spot of the canvas, which is that large now, lies at a point of the window. */
    static void bring(JViewport window, Point spot, Point inWindow, Dimension canvas) {
        place(window, spot.x - inWindow.x, spot.y - inWindow.y, canvas);
    }

    /** Moves the canvas under the window, as by a hand that holds it. */
    static void drag(JViewport window, JComponent canvas, int rightPx, int downPx) {
        Point view = window.getViewPosition();
        place(window, view.x - rightPx, view.y - downPx, canvas.getSize());
    }

    private static void place(JViewport window, int x, int y, Dimension canvas) {
        window.setViewPosition(new Point(
                Math.max(0, Math.min(x, canvas.width - window.getWidth())),
                Math.max(0, Math.min(y, canvas.height - window.getHeight()))));
    }
}
