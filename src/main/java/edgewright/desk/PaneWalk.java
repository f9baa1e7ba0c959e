package edgewright.desk;

import edgewright.desk.parts.Look;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.border.AbstractBorder;

/**
 * The panes of a document in the order in which a key walks them. The one that has the keys has a line along its top, so that
 * it is seen where the walk has come to.
 */
final class PaneWalk {
    private static final int LINE_PX = 3;

    /**
     * A pane of the walk.
     *
     * @param whole on which the line is drawn
     * @param first which part of it has the keys first; may be another one as the pane changes
     */
    private record Stop(JComponent whole, FirstPart first) {}

    /** Says which part of a pane has the keys first. */
    interface FirstPart {
        Component now();
    }

    private final List<Stop> stops = new ArrayList<>();
    private final PropertyChangeListener following = event -> repaint();

    /** Adds a pane at the end of the walk. */
    void add(JComponent whole, FirstPart first) {
        stops.add(new Stop(whole, first));
        whole.setBorder(BorderFactory.createCompoundBorder(new Line(whole), whole.getBorder()));
    }

    /** Watches where the keys are, as long as its document is in front. */
    void watch() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addPropertyChangeListener("focusOwner", following);
    }

    /** Watches no more. */
    void rest() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removePropertyChangeListener("focusOwner", following);
    }

    /** Goes that many panes on from the one that has the keys, or from the first if none has them. */
    void step(int by) {
        int now = -1;
        for (int i = 0; i < stops.size(); i++) {
            if (hasKeys(stops.get(i).whole())) {
                now = i;
            }
        }
        int next = now < 0 ? 0 : Math.floorMod(now + by, stops.size());
        stops.get(next).first().now().requestFocusInWindow();
    }

    private void repaint() {
        for (Stop stop : stops) {
            stop.whole().repaint(new Rectangle(0, 0, stop.whole().getWidth(), LINE_PX));
        }
    }

    private static boolean hasKeys(Container pane) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, pane);
    }

    /** The line along the top of a pane, of the ground of the pane while the keys are elsewhere. */
    private static final class Line extends AbstractBorder {
        private final transient Container pane;

        Line(Container pane) {
            this.pane = pane;
        }

        @Override
        public Insets getBorderInsets(Component of, Insets insets) {
            insets.set(LINE_PX, 0, 0, 0);
            return insets;
        }

        @Override
        public void paintBorder(Component of, Graphics g, int x, int y, int width, int height) {
            if (hasKeys(pane)) {
                g.setColor(Look.colour("accent"));
                g.fillRect(x, y, width, LINE_PX);
            }
        }
    }
}
