package edgewright.desk.parts;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** Names of keys for people, the same on every machine. */
public final class KeyNames {
    private KeyNames() {}

    /** A key stroke such as {@code Ctrl+Shift+S}. */
    public static String of(KeyStroke key) {
        String modifiers = InputEvent.getModifiersExText(key.getModifiers());
        String name = switch (key.getKeyCode()) {
            // As the keys themselves are lettered.
            case KeyEvent.VK_EQUALS -> "=";
            case KeyEvent.VK_MINUS -> "-";
            default -> KeyEvent.getKeyText(key.getKeyCode());
        };
        return modifiers.isEmpty() ? name : modifiers + "+" + name;
    }
}
