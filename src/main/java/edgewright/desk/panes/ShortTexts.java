package edgewright.desk.panes;

import java.awt.Insets;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.Icon;

/** Buttons that show their names where there is room, and signs alone where there is not; their names are heard either way. */
final class ShortTexts {
    private static final Insets NARROW = new Insets(4, 6, 4, 6);

    private final Map<AbstractButton, Usual> buttons = new LinkedHashMap<>();

    /** A button as it looks with room. */
    private record Usual(String text, Icon icon, Insets margin, Icon sign) {}

    /**
     * Takes a button in.
     *
     * @param sign that stands for its name
     */
    void add(AbstractButton button, Icon sign) {
        button.getAccessibleContext().setAccessibleName(button.getText());
        if (button.getToolTipText() == null) {
            button.setToolTipText(button.getText());
        }
        buttons.put(button, new Usual(button.getText(), button.getIcon(), button.getMargin(), sign));
    }

    /** Shows signs alone, or names again. */
    void shorten(boolean signs) {
        buttons.forEach((button, usual) -> {
            button.setHideActionText(signs);
            button.setText(signs ? null : usual.text());
            button.setIcon(signs ? usual.sign() : usual.icon());
            button.setMargin(signs ? NARROW : usual.margin());
        });
    }
}
