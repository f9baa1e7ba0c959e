package edgewright.desk.parts;

import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.texts.Language;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/**
 * The commands of a window as Swing offers them: those of the desk itself, and those of the document that is in front. An
 * action stays the same while another document comes to the front.
 */
public final class DeskActions {
    private final Map<String, DeskAction> byId = new LinkedHashMap<>();
    private final CommandTexts texts;
    private final List<Runnable> afterRefresh = new ArrayList<>();
    private final Commands desk = new Commands();
    private Commands front = new Commands();

    public DeskActions(Language language) {
        texts = new CommandTexts(language);
    }

    /** What can be done whatever document is in front. */
    public Commands desk() {
        return desk;
    }

    /** Has these be the commands of the document in front. */
    public void bringToFront(Commands document) {
        front = document;
        refresh();
    }

    /** The command of this id that would be done now. */
    public Optional<Command> command(String id) {
        return desk.find(id).or(() -> front.find(id));
    }

    /** Everything that there is to do now, of the desk and of the document in front. */
    public List<Command> all() {
        return Stream.concat(desk.all().stream(), front.all().stream()).toList();
    }

    /** The action of this id, which must have a name in the texts. */
    public DeskAction get(String id) {
        return byId.computeIfAbsent(id, unknown -> new DeskAction(unknown, this, texts));
    }

    /** Has the keys that menus do not show do what they are for, wherever the keys go in the window of this part. */
    public void bindOtherKeys(JComponent root) {
        for (Command command : all()) {
            DeskAction action = get(command.id());
            List<KeyStroke> keys = texts.keys(command.id());
            if (action.isOfWindow() && keys.size() > 1) {
                keys.stream()
                        .skip(1)
                        .forEach(key -> root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                                .put(key, command.id()));
                root.getActionMap().put(command.id(), action);
            }
        }
    }

    /** Has this done at every refresh, after each action was looked at: for names that depend on the chart. */
    public void afterRefresh(Runnable also) {
        afterRefresh.add(also);
    }

    /** Looks again which actions are possible now. */
    public void refresh() {
        byId.values().forEach(DeskAction::refresh);
        afterRefresh.forEach(Runnable::run);
    }
}
