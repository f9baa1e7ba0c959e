package edgewright.desk.canvas;

import edgewright.desk.work.ChartView;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/**
 * How large the chart is on its canvas: fitted into the window, and then again at every resize, until somebody chooses another
 * size.
 */
final class CanvasZoom {
    static final int MARGIN_PX = 24;
    private static final int LARGEST_FIT_PX = 40;

    private final ChartCanvas canvas;
    private final ChartView view;
    private final ComponentAdapter refitting = new ComponentAdapter() {
        @Override
        public void componentResized(ComponentEvent event) {
            refit();
        }
    };
    private Optional<JViewport> watched = Optional.empty();

    CanvasZoom(ChartCanvas canvas, ChartView view) {
        this.canvas = canvas;
        this.view = view;
    }

    /** Follows the window in which the canvas lies now, and no other. */
    void watch() {
        watched.ifPresent(window -> window.removeComponentListener(refitting));
        watched = canvas.getParent() instanceof JViewport window ? Optional.of(window) : Optional.empty();
        watched.ifPresent(window -> window.addComponentListener(refitting));
    }

    /** Makes the whole chart fit into its window, as large as can be without getting coarse. */
    void fit() {
        view.fit();
        refit();
    }

    /** Fits the chart once more, if it is fitted. */
    void refit() {
        if (!view.isFitted() || !(canvas.getParent() instanceof JViewport window) || window.getWidth() == 0) {
            return;
        }
        view.fitTo(CanvasWindow.fittingCellPx(
                window, canvas.cellsAcross(), canvas.cellsDown(), MARGIN_PX, LARGEST_FIT_PX));
        canvas.revalidate();
    }

    /** Zooms a step in or out; what lies under the point stays there. */
    void zoomAt(Point point, int by) {
        Point2D mm = canvas.scale().toMm(point);
        Point inWindow = SwingUtilities.convertPoint(canvas, point, canvas.getParent());
        view.zoom(by);
        if (canvas.getParent() instanceof JViewport window) {
            Dimension size = canvas.getPreferredSize();
            canvas.setSize(size);
            CanvasScale now =
                    canvas.scale(Math.max(size.width, window.getWidth()), Math.max(size.height, window.getHeight()));
            CanvasWindow.bring(window, now.toPx(mm), inWindow, size);
        }
    }
}
