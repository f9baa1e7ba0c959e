package edgewright.desk.parts;

import com.formdev.flatlaf.ui.FlatMenuItemRenderer;
import com.formdev.flatlaf.ui.FlatMenuItemUI;
import java.awt.Font;
import javax.swing.Action;
import javax.swing.Icon;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;

/** A line of a menu that writes its key as {@link KeyNames} does, as every other part of the desk. */
public final class MenuLine extends JMenuItem {
    public MenuLine(Action action) {
        super(action);
    }

    @Override
    public void updateUI() {
        setUI(new FlatMenuItemUI() {
            @Override
            protected FlatMenuItemRenderer createRenderer() {
                return new KeyWriter(MenuLine.this, checkIcon, arrowIcon, acceleratorFont, acceleratorDelimiter);
            }
        });
    }

    private static final class KeyWriter extends FlatMenuItemRenderer {
        KeyWriter(JMenuItem line, Icon check, Icon arrow, Font font, String delimiter) {
            super(line, check, arrow, font, delimiter);
        }

        @Override
        protected String getTextForAccelerator(KeyStroke key) {
            return KeyNames.of(key);
        }
    }
}
