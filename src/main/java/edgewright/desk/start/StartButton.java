package edgewright.desk.start;

import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** A button with parts laid out in it. Enter does it as the space key does, and it comes into view with the keys. */
class StartButton extends JButton {
    private static final int MARGIN_PX = 8;

    StartButton(String name, String columns) {
        setName(name);
        setLayout(new MigLayout("insets 0, gap 3, wrap 1, aligny top", columns));
        setMargin(new Insets(MARGIN_PX, MARGIN_PX, MARGIN_PX, MARGIN_PX));
        getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke("ENTER"), "pressed");
        getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke("released ENTER"), "released");
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                scrollRectToVisible(new Rectangle(0, -MARGIN_PX, getWidth(), getHeight() + 2 * MARGIN_PX));
            }
        });
    }

    @Override
    public Dimension getPreferredSize() {
        return getLayout() == null ? super.getPreferredSize() : getLayout().preferredLayoutSize(this);
    }

    @Override
    public Dimension getMinimumSize() {
        return getLayout() == null ? super.getMinimumSize() : getLayout().minimumLayoutSize(this);
    }
}
