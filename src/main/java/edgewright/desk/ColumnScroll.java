package edgewright.desk;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** A column that is as wide as its window and scrolls only up and down. */
class ColumnScroll extends JScrollPane {
    ColumnScroll(String name) {
        setName(name);
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
    }

    /** Shows this column, from its top. */
    final void show(JComponent column) {
        Holder holder = new Holder();
        holder.add(column, "wmin 0");
        setViewportView(holder);
        getViewport().setViewPosition(new java.awt.Point(0, 0));
    }

    /** Takes the width of the viewport, whatever its content would like best. */
    private static final class Holder extends JPanel implements Scrollable {
        Holder() {
            super(new MigLayout("insets 0, fillx", "[grow, fill]"));
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return 16;
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return visible.height - 16;
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return false;
        }
    }
}
