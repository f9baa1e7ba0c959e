package edgewright.desk.canvas;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.Scrollable;

/** A canvas of squares in a scroll pane: it fills a window that is larger, and scrolls by whole squares in a smaller one. */
abstract class ScrolledCanvas extends JComponent implements Scrollable {
    /** The edge of a square, in pixels before the scaling of the screen. */
    abstract int cellPx();

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(760, 560);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(12, 2 * cellPx());
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return 10 * cellPx();
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() instanceof JViewport window && window.getWidth() >= getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() instanceof JViewport window && window.getHeight() >= getPreferredSize().height;
    }
}
