package edgewright.desk.dialogs;

import static edgewright.texts.Arg.count;

import edgewright.desk.parts.FormDialog;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JSpinner;

/** Asks by how many columns the repeat is to be shifted. */
public final class ShiftDialog extends FormDialog {
    private final transient Messages says;
    private final JSpinner columns;

    public ShiftDialog(Window owner, int w, Language language) {
        super(owner, "shift", language);
        says = language.messages("desk/dialogs");
        titled(says.text("shift-title"), says.text("shift-accept"));
        columns = number("shift.columns", says.text("shift-columns"), 1, 1 - w, w - 1);
        explain(says.text("shift-explain", count("stitches", w)));
    }

    public int columns() {
        return value(columns);
    }

    @Override
    protected Optional<String> objection() {
        return value(columns) == 0 ? Optional.of(says.text("shift-objection")) : Optional.empty();
    }
}
