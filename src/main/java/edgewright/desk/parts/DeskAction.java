package edgewright.desk.parts;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.event.ActionEvent;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/**
 * Something that can be done in the window, under one name wherever it is offered. Its name, mnemonic, key and tip come from
 * the messages {@code action-<id>}, {@code key-<id>} and {@code tip-<id>}, a full stop in the id being a hyphen; an ampersand
 * in the name stands before the mnemonic.
 */
public final class DeskAction extends AbstractAction {
    private static final boolean MAC =
            System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("mac");

    private final transient Runnable deed;
    private final transient BooleanSupplier possible;
    private final transient Messages says;

    /**
     * An action.
     *
     * @param id under which its texts stand
     * @param possible asked at {@link #refresh}; while it says no, the action is greyed
     */
    public DeskAction(String id, Runnable deed, BooleanSupplier possible, Language language) {
        this.deed = deed;
        this.possible = possible;
        says = language.messages("desk/parts");
        putValue(ACTION_COMMAND_KEY, id);
        name(Optional.empty());
        if (says.has("tip-" + text())) {
            putValue(SHORT_DESCRIPTION, says.text("tip-" + text()));
        }
        if (says.has("key-" + text())) {
            putValue(ACCELERATOR_KEY, key(says.text("key-" + text())));
        }
    }

    /** The id under which its texts stand; also the stable name of whatever offers it. */
    String id() {
        return (String) getValue(ACTION_COMMAND_KEY);
    }

    /** The end of the keys of its texts. */
    private String text() {
        return id().replace('.', '-');
    }

    /** Gives the action another name, with an ampersand before the mnemonic, or the one that it had first. */
    public void name(Optional<String> other) {
        String withAmpersand = other.orElseGet(() -> says.text("action-" + text()));
        int mark = withAmpersand.indexOf('&');
        if (mark < 0) {
            putValue(Action.NAME, withAmpersand);
            return;
        }
        putValue(Action.NAME, withAmpersand.substring(0, mark) + withAmpersand.substring(mark + 1));
        putValue(MNEMONIC_KEY, (int) Character.toUpperCase(withAmpersand.charAt(mark + 1)));
        putValue(DISPLAYED_MNEMONIC_INDEX_KEY, mark);
    }

    /** Its name as it was first given, without what depends on the chart. */
    public String plainName() {
        return says.text("action-" + text()).replace("&", "");
    }

    /** The key that does it beside the one that menus show. */
    public Optional<KeyStroke> alsoKey() {
        return says.has("also-key-" + text()) ? Optional.of(key(says.text("also-key-" + text()))) : Optional.empty();
    }

    /** Has its other key do it everywhere in the window of this part. */
    public void alsoOn(JComponent root) {
        alsoKey().ifPresent(key -> {
            root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(key, id());
            root.getActionMap().put(id(), this);
        });
    }

    /** Looks again whether it is possible now. */
    void refresh() {
        setEnabled(possible.getAsBoolean());
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        if (possible.getAsBoolean()) {
            deed.run();
        }
    }

    /** A key stroke as the texts write it; {@code menu} is the key that menus go with on this machine. */
    public static KeyStroke key(String text) {
        return KeyStroke.getKeyStroke(text.replace("menu", MAC ? "meta" : "ctrl"));
    }
}
