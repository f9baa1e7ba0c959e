package edgewright.desk.parts;

import edgewright.desk.work.DeskTexts;
import java.awt.event.InputEvent;
import java.util.StringJoiner;
import javax.swing.KeyStroke;

/** Names of keys for people, the same on every machine: Java has its own in every language that it speaks. */
public final class KeyNames {
    private KeyNames() {}

    /** A key stroke such as {@code Ctrl+Shift+S}. A key without a text of its own is called by its letter or number. */
    public static String of(KeyStroke key) {
        StringJoiner name = new StringJoiner("+");
        int modifiers = key.getModifiers();
        addIf((modifiers & InputEvent.META_DOWN_MASK) != 0, "keyName.meta", name);
        addIf((modifiers & InputEvent.CTRL_DOWN_MASK) != 0, "keyName.ctrl", name);
        addIf((modifiers & InputEvent.ALT_DOWN_MASK) != 0, "keyName.alt", name);
        addIf((modifiers & InputEvent.SHIFT_DOWN_MASK) != 0, "keyName.shift", name);
        String code = code(key);
        return name.add(DeskTexts.has("keyName." + code) ? DeskTexts.of("keyName." + code) : code)
                .toString();
    }

    private static void addIf(boolean isHeld, String modifier, StringJoiner name) {
        if (isHeld) {
            name.add(DeskTexts.of(modifier));
        }
    }

    /** The name of the key's constant, which a stroke writes last: {@code DELETE}, {@code S}, {@code F4}. */
    static String code(KeyStroke key) {
        String written = key.toString();
        return written.substring(written.lastIndexOf(' ') + 1);
    }
}
