package edgewright.desk.parts;

import edgewright.desk.command.Command;
import edgewright.desk.command.Hindrance;
import edgewright.desk.command.Scope;
import java.awt.event.ActionEvent;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.Action;

/**
 * A command as Swing offers it, under one name wherever that is. What it does is what the command of its id does that is in
 * front; while that is hindered, or there is none, it is greyed, and its tip says why.
 */
public final class DeskAction extends AbstractAction {
    private final transient DeskActions actions;
    private final transient CommandTexts texts;

    DeskAction(String id, DeskActions actions, CommandTexts texts) {
        this.actions = actions;
        this.texts = texts;
        putValue(ACTION_COMMAND_KEY, id);
        name(Optional.empty());
        putValue(SHORT_DESCRIPTION, texts.tip(id));
        texts.keys(id).stream().findFirst().ifPresent(key -> putValue(ACCELERATOR_KEY, key));
    }

    /** The id of its command; also the stable name of whatever offers it. */
    String id() {
        return (String) getValue(ACTION_COMMAND_KEY);
    }

    /** Whether its key does it wherever the keys go in the window; else the chart sees to that itself. */
    boolean isOfWindow() {
        return command().filter(command -> command.scope() == Scope.CHART).isEmpty();
    }

    /** Gives the action another name, with an ampersand before the mnemonic, or the one that it had first. */
    public void name(Optional<String> other) {
        String withAmpersand = other.orElseGet(() -> texts.withMnemonic(id()));
        int mark = withAmpersand.indexOf('&');
        if (mark < 0) {
            putValue(Action.NAME, withAmpersand);
            return;
        }
        putValue(Action.NAME, withAmpersand.substring(0, mark) + withAmpersand.substring(mark + 1));
        putValue(MNEMONIC_KEY, (int) Character.toUpperCase(withAmpersand.charAt(mark + 1)));
        putValue(DISPLAYED_MNEMONIC_INDEX_KEY, mark);
    }

    private Optional<Command> command() {
        return actions.command(id());
    }

    /** Looks again whether it is possible now, and whether it is what is chosen. */
    void refresh() {
        Optional<Hindrance> hindrance = command().flatMap(Command::hindrance);
        setEnabled(command().isPresent() && hindrance.isEmpty());
        String tip = texts.tip(id());
        putValue(
                SHORT_DESCRIPTION, hindrance.map(of -> texts.tipGreyed(tip, of)).orElse(tip));
        command()
                .flatMap(Command::chosen)
                .ifPresent(chosen -> putValue(SELECTED_KEY, chosen.holds().getAsBoolean()));
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        command().ifPresent(Command::perform);
    }
}
