package edgewright.desk.parts;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.RootPaneContainer;
import javax.swing.UIManager;
import javax.swing.text.DefaultCaret;

/** The small parts that forms and panes are made of, each with its name for the eye, the ear and the tests. */
public final class Forms {
    private static final int MESSAGE_PX = 380;

    private Forms() {}

    /** A button that does an action and bears its name. */
    public static JButton button(DeskAction action) {
        JButton button = new JButton(action);
        button.setName(action.id());
        button.setHideActionText(false);
        return button;
    }

    /** Puts a text with an ampersand before its mnemonic on a button, and a tip. */
    public static <B extends AbstractButton> B caption(B button, String text, String tip) {
        button.setToolTipText(tip);
        return caption(button, text);
    }

    /** Puts a text with an ampersand before its mnemonic on a button. */
    public static <B extends AbstractButton> B caption(B button, String text) {
        int mark = text.indexOf('&');
        button.setText(text.replace("&", ""));
        if (mark >= 0) {
            button.setMnemonic(Character.toUpperCase(text.charAt(mark + 1)));
            button.setDisplayedMnemonicIndex(mark);
        }
        return button;
    }

    /** Makes one of these be chosen at a time; the arrow keys go from one to the next, as the tabulator stops at one only. */
    public static void oneOf(List<? extends AbstractButton> buttons) {
        ButtonGroup group = new ButtonGroup();
        for (int i = 0; i < buttons.size(); i++) {
            AbstractButton button = buttons.get(i);
            group.add(button);
            onKey(button, "LEFT", buttons.get(Math.floorMod(i - 1, buttons.size())));
            onKey(button, "RIGHT", buttons.get((i + 1) % buttons.size()));
        }
    }

    private static void onKey(AbstractButton at, String key, AbstractButton to) {
        at.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        at.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                to.doClick();
                to.requestFocusInWindow();
            }
        });
    }

    /** A label for a field, which is then called by its text too. */
    public static JLabel label(String text, JComponent field) {
        return label(new JLabel(), text, field);
    }

    public static JLabel label(JLabel label, String text, JComponent field) {
        int mark = text.indexOf('&');
        label.setText(text.replace("&", ""));
        if (mark >= 0) {
            label.setDisplayedMnemonic(Character.toUpperCase(text.charAt(mark + 1)));
            label.setDisplayedMnemonicIndex(mark);
        }
        label.setLabelFor(field);
        field.getAccessibleContext().setAccessibleName(label.getText());
        return label;
    }

    /** Running text that wraps, can be selected and copied, and stands on its ground without a frame. */
    public static JTextArea prose(String text) {
        JTextArea prose = new JTextArea() {
            @Override
            public void updateUI() {
                super.updateUI();
                setFont(UIManager.getFont("Label.font"));
            }
        };
        prose.setEditable(false);
        if (prose.getCaret() instanceof DefaultCaret caret) {
            // A text that comes into view must not scroll its page to itself.
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        prose.setText(text);
        prose.setOpaque(false);
        prose.setLineWrap(true);
        prose.setWrapStyleWord(true);
        prose.setBorder(BorderFactory.createEmptyBorder());
        tabLeaves(prose);
        return prose;
    }

    /** What a question or a notice says: running text of any length in a dialog. */
    public static JComponent message(String text) {
        JTextArea prose = prose(text);
        prose.setName("message");
        // It wraps at this width and is as high as that makes it.
        prose.setSize(Look.px(MESSAGE_PX), Short.MAX_VALUE);
        prose.setPreferredSize(new Dimension(Look.px(MESSAGE_PX), prose.getPreferredSize().height));
        return prose;
    }

    /** A renderer that shows a value by this text. */
    @SuppressWarnings("unchecked") // A list shows only what was put into it.
    public static <T> ListCellRenderer<Object> renderer(Function<T, String> text) {
        return new DefaultListCellRenderer() {
            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean chosen, boolean focused) {
                return super.getListCellRendererComponent(
                        list, value == null ? "" : text.apply((T) value), index, chosen, focused);
            }
        };
    }

    /** Lets the tabulator lead out of a table or a text, as everywhere else. */
    public static void tabLeaves(JComponent component) {
        component.setFocusTraversalKeys(
                KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("TAB")));
        component.setFocusTraversalKeys(
                KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("shift TAB")));
    }

    /** Has this done when Escape is pressed in a window, unless something within it takes the key itself. */
    public static void onEscape(RootPaneContainer window, Runnable deed) {
        window.getRootPane()
                .registerKeyboardAction(
                        event -> deed.run(),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    }
}
