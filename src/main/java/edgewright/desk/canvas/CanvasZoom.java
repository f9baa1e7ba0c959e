package edgewright.desk.canvas;

import edgewright.desk.picture.CanvasPicture;
import edgewright.desk.picture.CanvasScale;
import edgewright.desk.work.ChartView;
import java.awt.Dimension;
import java.awt.Insets;
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
    private static final int LARGEST_FIT_PX = 40;
    /** The logarithm of the least factor of which something must be seen at once. */
    private static final double WHOLE_NOTCH = 0.1;

    private final ChartCanvas canvas;
    private final ChartView view;
    private final ComponentAdapter refitting = new ComponentAdapter() {
        @Override
        public void componentResized(ComponentEvent event) {
            refit();
        }
    };
    private Optional<JViewport> watched = Optional.empty();
    /** How large the squares would be if they need not be whole pixels. */
    private double exactPx;

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
                window,
                canvas.picture().widthMm() / CanvasPicture.CELL_MM,
                canvas.picture().heightMm() / CanvasPicture.CELL_MM,
                CanvasPicture.MARGIN_PX,
                LARGEST_FIT_PX));
        canvas.revalidate();
    }

    /**
     * Makes the squares that many times as large; what lies under the point stays there. Squares are whole pixels, so what is
     * less than one is kept for the next time; but whoever turns a whole notch sees something.
     */
    void zoomBy(Point point, double factor) {
        double from = (int) Math.round(exactPx) == view.cellPx() ? exactPx : view.cellPx();
        double to = from * factor;
        if (Math.abs(Math.log(factor)) > WHOLE_NOTCH && Math.round(to) == view.cellPx()) {
            to = view.cellPx() + Math.signum(factor - 1);
        }
        exactPx = to;
        Point2D mm = canvas.scale().toMm(point);
        Point inWindow = SwingUtilities.convertPoint(canvas, point, canvas.getParent());
        view.zoomTo((int) Math.round(to));
        if (canvas.getParent() instanceof JViewport window) {
            Dimension size = canvas.getPreferredSize();
            canvas.setSize(size);
            CanvasScale now = scale(Math.max(size.width, window.getWidth()), Math.max(size.height, window.getHeight()));
            CanvasWindow.bring(window, now.toPx(mm), inWindow, size);
        }
    }

    /** The room that the chart needs with what is left free around it, in pixels before the scaling of the screen. */
    Dimension needed() {
        Insets insets = canvas.getInsets();
        return new Dimension(
                (int) Math.ceil(canvas.picture().widthMm() * pxPerMm())
                        + 2 * CanvasPicture.MARGIN_PX
                        + insets.left
                        + insets.right,
                (int) Math.ceil(canvas.picture().heightMm() * pxPerMm())
                        + 2 * CanvasPicture.MARGIN_PX
                        + insets.top
                        + insets.bottom);
    }

    /** How the chart lies on a canvas of that size. */
    CanvasScale scale(int widthPx, int heightPx) {
        CanvasPicture picture = canvas.picture();
        return CanvasScale.centred(
                pxPerMm(),
                picture.widthMm(),
                picture.heightMm(),
                picture.layout().area(),
                widthPx,
                heightPx,
                CanvasPicture.MARGIN_PX);
    }

    private double pxPerMm() {
        return view.cellPx() / CanvasPicture.CELL_MM;
    }
}
