package edgewright.desk.pattern;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The keys that walk the reading mark while the words have the focus. Which key does what lies in the texts {@code keys-*}. */
public final class PatternKeys {
    private static final List<String> IDS = List.of(
            "next", "back", "nextStep", "stepBack", "nextRound", "roundBack", "first", "last", "there", "leave");

    private PatternKeys() {}

    /**
     * What a key does, for the help.
     *
     * @param shown the key as it is lettered
     */
    public record KeyHelp(String shown, String does) {}

    /** Everything that a key does in the words, in the order in which it is looked for. */
    public static List<KeyHelp> help(Language language) {
        Messages says = language.messages("desk/pattern");
        return IDS.stream()
                .map(id -> new KeyHelp(says.text("shown-" + id), says.text("does-" + id)))
                .toList();
    }

    /** Has each key do its deed; the deeds have the names of the keys. */
    static void bind(JComponent words, Map<String, Runnable> deeds, Messages says) {
        for (String id : IDS) {
            for (String key : says.text("keys-" + id).split(",")) {
                words.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key.strip()), "reading." + id);
            }
            Runnable deed = deeds.get(id);
            words.getActionMap().put("reading." + id, new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent event) {
                    deed.run();
                }
            });
        }
    }
}
