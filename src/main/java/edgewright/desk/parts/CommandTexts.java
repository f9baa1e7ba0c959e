package edgewright.desk.parts;

import static edgewright.texts.Arg.arg;

import edgewright.desk.command.Hindrance;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.KeyStroke;

/**
 * How commands are called, and which keys do them: the messages {@code action-<id>}, {@code tip-<id>} and {@code key-<id>}, a
 * full stop in the id being a hyphen. An ampersand in a name stands before the mnemonic; of several keys, with commas between
 * them, the first is the one that is shown.
 */
public final class CommandTexts {
    private static final boolean MAC =
            System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("mac");

    private final Messages says;
    private final KeyNames names;

    public CommandTexts(Language language) {
        says = language.messages("desk/parts");
        names = new KeyNames(language);
    }

    /** Its name, with the ampersand. */
    String withMnemonic(String id) {
        return says.text("action-" + id.replace('.', '-'));
    }

    /** Its name. */
    public String name(String id) {
        return withMnemonic(id).replace("&", "");
    }

    /** What it does, in a few words more; its name where there are none. */
    public String tip(String id) {
        String key = "tip-" + id.replace('.', '-');
        return says.has(key) ? says.text("tip-" + id.replace('.', '-')) : name(id);
    }

    /** What it does, and why that is not possible now. */
    String tipGreyed(String tip, Hindrance hindrance) {
        return says.text("greyed", arg("tip", tip), arg("why", why(hindrance)));
    }

    /** Why it is not possible. */
    public String why(Hindrance hindrance) {
        return says.text("hindrance-" + hindrance);
    }

    /** The keys that do it, the shown one first. */
    public List<KeyStroke> keys(String id) {
        String key = "key-" + id.replace('.', '-');
        return says.has(key)
                ? Stream.of(says.text("key-" + id.replace('.', '-')).split(","))
                        .map(text -> key(text.strip()))
                        .toList()
                : List.of();
    }

    /** The keys that do it, as they are lettered: the shown one first, and none twice that is only on two places of a keyboard. */
    public List<String> keyNames(String id) {
        return keys(id).stream()
                .filter(key -> !KeyNames.code(key).startsWith("KP_"))
                .map(names::of)
                .toList();
    }

    /** A key stroke as the texts write it; {@code menu} is the key that menus go with on this machine. */
    static KeyStroke key(String text) {
        return KeyStroke.getKeyStroke(text.replace("menu", MAC ? "meta" : "ctrl"));
    }
}
