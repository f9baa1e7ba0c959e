package edgewright.desk.parts;

import com.formdev.flatlaf.ui.FlatCheckBoxMenuItemUI;
import com.formdev.flatlaf.ui.FlatMenuItemRenderer;
import com.formdev.flatlaf.ui.FlatMenuItemUI;
import com.formdev.flatlaf.ui.FlatRadioButtonMenuItemUI;
import edgewright.texts.Language;
import java.awt.Font;
import java.awt.event.KeyEvent;
import javax.swing.AbstractButton;
import javax.swing.ButtonModel;
import javax.swing.Icon;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;

/** The lines of menus. They write their keys as {@link KeyNames} does, as every other part of the desk. */
public final class MenuLine {
    private MenuLine() {}

    /** A line that does an action. */
    public static JMenuItem of(DeskAction action, Language language) {
        return new JMenuItem(action) {
            @Override
            protected boolean processKeyBinding(KeyStroke key, KeyEvent event, int condition, boolean pressed) {
                // A key that counts on the chart only is shown here, but does nothing elsewhere.
                return action.isOfWindow() && super.processKeyBinding(key, event, condition, pressed);
            }

            @Override
            public void doClick(int pressTime) {
                press(this);
            }

            @Override
            public void updateUI() {
                JMenuItem line = this;
                PlainText.only(line);
                setUI(new FlatMenuItemUI() {
                    @Override
                    protected FlatMenuItemRenderer createRenderer() {
                        return new KeyWriter(
                                line, checkIcon, arrowIcon, acceleratorFont, acceleratorDelimiter, language);
                    }
                });
            }
        };
    }

    /** A line of several of which one is chosen. */
    public static JRadioButtonMenuItem oneOf(DeskAction action, Language language) {
        return new JRadioButtonMenuItem(action) {
            @Override
            protected boolean processKeyBinding(KeyStroke key, KeyEvent event, int condition, boolean pressed) {
                // A key that counts on the chart only is shown here, but does nothing elsewhere.
                return action.isOfWindow() && super.processKeyBinding(key, event, condition, pressed);
            }

            @Override
            public void doClick(int pressTime) {
                press(this);
            }

            @Override
            public void updateUI() {
                JMenuItem line = this;
                PlainText.only(line);
                setUI(new FlatRadioButtonMenuItemUI() {
                    @Override
                    protected FlatMenuItemRenderer createRenderer() {
                        return new KeyWriter(
                                line, checkIcon, arrowIcon, acceleratorFont, acceleratorDelimiter, language);
                    }
                });
            }
        };
    }

    /** A line that is on or off. */
    public static JCheckBoxMenuItem onOff(DeskAction action, Language language) {
        return new JCheckBoxMenuItem(action) {
            @Override
            protected boolean processKeyBinding(KeyStroke key, KeyEvent event, int condition, boolean pressed) {
                // A key that counts on the chart only is shown here, but does nothing elsewhere.
                return action.isOfWindow() && super.processKeyBinding(key, event, condition, pressed);
            }

            @Override
            public void doClick(int pressTime) {
                press(this);
            }

            @Override
            public void updateUI() {
                JMenuItem line = this;
                PlainText.only(line);
                setUI(new FlatCheckBoxMenuItemUI() {
                    @Override
                    protected FlatMenuItemRenderer createRenderer() {
                        return new KeyWriter(
                                line, checkIcon, arrowIcon, acceleratorFont, acceleratorDelimiter, language);
                    }
                });
            }
        };
    }

    /**
     * Does what a line does. Its key presses it while nobody sees it, and Swing would hold the event thread for the 68 ms that a
     * button is seen pressed.
     */
    private static void press(AbstractButton line) {
        ButtonModel model = line.getModel();
        model.setArmed(true);
        model.setPressed(true);
        model.setPressed(false);
        model.setArmed(false);
    }

    private static final class KeyWriter extends FlatMenuItemRenderer {
        private final KeyNames names;

        KeyWriter(JMenuItem line, Icon check, Icon arrow, Font font, String delimiter, Language language) {
            super(line, check, arrow, font, delimiter);
            names = new KeyNames(language);
        }

        @Override
        protected String getTextForAccelerator(KeyStroke key) {
            return names.of(key);
        }
    }
}
