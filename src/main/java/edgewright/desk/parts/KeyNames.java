package edgewright.desk.parts;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.event.InputEvent;
import java.util.StringJoiner;
import javax.swing.KeyStroke;

/** Names of keys for people, the same on every machine: Java has its own in every language that it speaks. */
public final class KeyNames {
    private final Messages says;

    public KeyNames(Language language) {
        says = language.messages("desk/parts");
    }

    /** A key stroke such as {@code Ctrl+Shift+S}. A key without a text of its own is called by its letter or number. */
    public String of(KeyStroke key) {
        StringJoiner name = new StringJoiner("+");
        int modifiers = key.getModifiers();
        addIf((modifiers & InputEvent.META_DOWN_MASK) != 0, says.text("modifier-meta"), name);
        addIf((modifiers & InputEvent.CTRL_DOWN_MASK) != 0, says.text("modifier-ctrl"), name);
        addIf((modifiers & InputEvent.ALT_DOWN_MASK) != 0, says.text("modifier-alt"), name);
        addIf((modifiers & InputEvent.SHIFT_DOWN_MASK) != 0, says.text("modifier-shift"), name);
        String code = code(key);
        return name.add(says.has("keyName-" + code) ? says.text("keyName-" + code) : code)
                .toString();
    }

    private static void addIf(boolean isHeld, String modifier, StringJoiner name) {
        if (isHeld) {
            name.add(modifier);
        }
    }

    /** The name of the key's constant, which a stroke writes last: {@code DELETE}, {@code S}, {@code F4}. */
    static String code(KeyStroke key) {
        String written = key.toString();
        return written.substring(written.lastIndexOf(' ') + 1);
    }
}
