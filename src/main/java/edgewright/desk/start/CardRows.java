package edgewright.desk.start;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import javax.swing.JPanel;

/** Cards of one size in as many rows as they need at the width that there is, from the left. */
final class CardRows extends JPanel {
    private static final int GAP_PX = 10;

    CardRows(String name) {
        super(new Rows());
        setName(name);
        setOpaque(false);
    }

    private static final class Rows implements LayoutManager {
        @Override
        public void layoutContainer(Container parent) {
            Dimension cell = cell(parent);
            int columns = columns(parent, cell);
            for (int i = 0; i < parent.getComponentCount(); i++) {
                parent.getComponent(i)
                        .setBounds(
                                i % columns * (cell.width + GAP_PX),
                                i / columns * (cell.height + GAP_PX),
                                cell.width,
                                cell.height);
            }
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            Dimension cell = cell(parent);
            int columns = columns(parent, cell);
            int rows = (parent.getComponentCount() + columns - 1) / columns;
            return new Dimension(cell.width, Math.max(0, rows * (cell.height + GAP_PX) - GAP_PX));
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return preferredLayoutSize(parent);
        }

        private static Dimension cell(Container parent) {
            Dimension cell = new Dimension(1, 1);
            for (Component card : parent.getComponents()) {
                Dimension wanted = card.getPreferredSize();
                cell = new Dimension(Math.max(cell.width, wanted.width), Math.max(cell.height, wanted.height));
            }
            return cell;
        }

        private static int columns(Container parent, Dimension cell) {
            return Math.max(1, (parent.getWidth() + GAP_PX) / (cell.width + GAP_PX));
        }

        @Override
        public void addLayoutComponent(String name, Component part) {
            // Cards have no names here.
        }

        @Override
        public void removeLayoutComponent(Component part) {
            // Nothing is remembered of a card.
        }
    }
}
