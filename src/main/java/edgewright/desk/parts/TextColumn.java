package edgewright.desk.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;

/**
 * A column of text, pictures and buttons, each as wide as the column and as high as it then needs to be: text that wraps has
 * no height of its own until it has a width.
 */
public final class TextColumn extends JPanel {
    private static final int AFTER_HEADING_PX = 3;
    private static final int AFTER_TEXT_PX = 8;

    public TextColumn(int topPx, int sidePx, int bottomPx) {
        super(new Stack());
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(topPx, sidePx, bottomPx, sidePx));
    }

    /** Adds a heading, which stands close to what follows it. */
    public void heading(String text) {
        add(Look.heading(text));
    }

    /** Adds running text. */
    public void prose(String text) {
        add(Forms.prose(text));
    }

    private static final class Stack implements LayoutManager {
        @Override
        public void layoutContainer(Container parent) {
            Insets insets = parent.getInsets();
            int width = parent.getWidth() - insets.left - insets.right;
            int y = insets.top;
            for (Component part : parent.getComponents()) {
                int height = heightAt(part, width);
                part.setBounds(insets.left, y, width, height);
                y += height + gapAfter(part);
            }
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            Insets insets = parent.getInsets();
            int widest = 0;
            int height = insets.top + insets.bottom;
            int width = parent.getWidth() - insets.left - insets.right;
            for (Component part : parent.getComponents()) {
                height += (width > 0 ? heightAt(part, width) : part.getPreferredSize().height) + gapAfter(part);
                widest = Math.max(widest, part.getPreferredSize().width);
            }
            return new Dimension(widest + insets.left + insets.right, height);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(0, preferredLayoutSize(parent).height);
        }

        @Override
        public void addLayoutComponent(String name, Component part) {
            // Parts have no names here.
        }

        @Override
        public void removeLayoutComponent(Component part) {
            // Nothing is remembered of a part.
        }

        private static int heightAt(Component part, int width) {
            part.setSize(width, part.getHeight());
            if (part instanceof Container container) {
                // A row gives its own text a width before it can say how high it is.
                container.doLayout();
            }
            return part.getPreferredSize().height;
        }

        private static int gapAfter(Component part) {
            return part instanceof JLabel ? AFTER_HEADING_PX : AFTER_TEXT_PX;
        }
    }
}
