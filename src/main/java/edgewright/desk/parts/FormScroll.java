package edgewright.desk.parts;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;

/** Holds a form, or a drawing with fields. On a low screen it scrolls up and down, and goes to the field that the keys go to. */
public final class FormScroll extends JScrollPane {
    private static final String FOCUS = "permanentFocusOwner";
    private static final int STEP_PX = 24;

    private final transient PropertyChangeListener follower = event -> follow((Component) event.getNewValue());

    public FormScroll(JComponent form) {
        super(new Holder(form), VERTICAL_SCROLLBAR_AS_NEEDED, HORIZONTAL_SCROLLBAR_NEVER);
        setName("form");
        setBorder(BorderFactory.createEmptyBorder());
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addPropertyChangeListener(FOCUS, follower);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removePropertyChangeListener(FOCUS, follower);
        super.removeNotify();
    }

    private void follow(Component focused) {
        if (focused instanceof JComponent field && SwingUtilities.isDescendingFrom(field, this)) {
            field.scrollRectToVisible(new Rectangle(field.getSize()));
        }
    }

    /** As wide as the viewport, and as high as it unless more is needed. */
    private static final class Holder extends JPanel implements Scrollable {
        Holder(JComponent form) {
            super(new BorderLayout());
            add(form, BorderLayout.CENTER);
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return STEP_PX;
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return Math.max(STEP_PX, visible.height - STEP_PX);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return getParent().getHeight() >= getPreferredSize().height;
        }
    }
}
