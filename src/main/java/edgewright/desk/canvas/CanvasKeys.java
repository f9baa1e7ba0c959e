package edgewright.desk.canvas;

import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.command.Scope;
import edgewright.desk.parts.CommandTexts;
import edgewright.texts.Language;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;

/** The keys that work on the chart while it has the focus: those of the commands whose keys count there only. */
public final class CanvasKeys {
    /** The command of the space bar. */
    static final String AT_SPACE = "workHere";

    private CanvasKeys() {}

    /** Has the keys of these commands do what they are for while this canvas has the focus. */
    public static void bind(ChartCanvas canvas, Commands commands, Language language) {
        CommandTexts texts = new CommandTexts(language);
        commands.all().stream()
                .filter(command -> command.scope() == Scope.CHART)
                .forEach(command -> bind(canvas, command, texts));
    }

    private static void bind(ChartCanvas canvas, Command command, CommandTexts texts) {
        texts.keys(command.id())
                .forEach(key -> canvas.getInputMap(JComponent.WHEN_FOCUSED).put(key, command.id()));
        canvas.getActionMap().put(command.id(), new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                command.perform();
            }
        });
    }
}
