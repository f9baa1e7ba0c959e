package edgewright.desk.parts;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** A column that is as wide as its window and scrolls only up and down. */
public class ColumnScroll extends JScrollPane {
    public ColumnScroll(String name) {
        setName(name);
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
    }

    /** Shows this column, from its top. */
    public final void show(TextColumn column) {
        setViewportView(new Holder(column));
        getViewport().setViewPosition(new Point(0, 0));
    }

    /** Takes the width of the viewport, whatever its content would like best. */
    private static final class Holder extends JPanel implements Scrollable {
        private final TextColumn column;

        Holder(TextColumn column) {
            super(new BorderLayout());
            this.column = column;
            add(column, BorderLayout.NORTH);
        }

        @Override
        public void setBounds(int x, int y, int width, int height) {
            boolean otherWidth = width != getWidth();
            super.setBounds(x, y, width, height);
            if (otherWidth) {
                column.setSize(width, column.getHeight());
                revalidate();
            }
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
