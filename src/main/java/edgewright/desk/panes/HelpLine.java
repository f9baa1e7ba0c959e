package edgewright.desk.panes;

import edgewright.desk.parts.Forms;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/**
 * A line that says what would help, and the button that does it. What it does is looked at while the mouse is on the line, or
 * the keys on the button.
 */
final class HelpLine extends JPanel {
    private final JButton button;
    private final transient Runnable look;
    private final transient Runnable leave;
    private boolean pointedAt;

    /**
     * @param name of the button
     * @param text what it does
     * @param deed the text of the button
     */
    HelpLine(String name, String text, String deed, Runnable look, Runnable leave, Runnable onDeed) {
        super(new BorderLayout(10, 0));
        this.look = look;
        this.leave = leave;
        setOpaque(false);
        button = Forms.caption(new JButton(), deed);
        button.setName(name);
        button.getAccessibleContext().setAccessibleName(text);
        button.setToolTipText(text);
        button.addActionListener(event -> onDeed.run());
        JPanel side = new JPanel(new BorderLayout());
        side.setOpaque(false);
        side.add(button, BorderLayout.NORTH);
        JTextArea what = Forms.prose(text);
        what.setBorder(BorderFactory.createEmptyBorder(4, 0, 0, 0));
        add(what, BorderLayout.CENTER);
        add(side, BorderLayout.LINE_END);
        Pointer pointer = new Pointer();
        List.of(this, side, what, button).forEach(part -> part.addMouseListener(pointer));
        button.addFocusListener(pointer);
    }

    JButton button() {
        return button;
    }

    /** Lets the arrow keys go up and down these buttons. */
    static void walk(List<JButton> buttons) {
        for (int i = 0; i < buttons.size(); i++) {
            onKey(buttons.get(i), "UP", buttons.get(Math.max(0, i - 1)));
            onKey(buttons.get(i), "DOWN", buttons.get(Math.min(buttons.size() - 1, i + 1)));
        }
    }

    private static void onKey(JButton at, String key, JButton to) {
        at.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        at.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                to.requestFocusInWindow();
            }
        });
    }

    /** The mouse on any part of the line, and the keys on its button. */
    private final class Pointer extends MouseAdapter implements FocusListener {
        @Override
        public void mouseEntered(MouseEvent event) {
            if (!pointedAt) {
                pointedAt = true;
                look.run();
            }
        }

        @Override
        public void mouseExited(MouseEvent event) {
            Component part = event.getComponent();
            if (pointedAt && !contains(SwingUtilities.convertPoint(part, event.getPoint(), HelpLine.this))) {
                pointedAt = false;
                leave.run();
            }
        }

        @Override
        public void focusGained(FocusEvent event) {
            scrollRectToVisible(new Rectangle(getSize()));
            if (!pointedAt) {
                look.run();
            }
        }

        @Override
        public void focusLost(FocusEvent event) {
            if (!pointedAt) {
                leave.run();
            }
        }
    }
}
