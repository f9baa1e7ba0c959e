package edgewright.desk.dialogs;

import edgewright.desk.parts.FormDialog;
import edgewright.desk.work.DeskTexts;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JSpinner;

/** Asks by how many columns the repeat is to be shifted. */
public final class ShiftDialog extends FormDialog {
    private final JSpinner columns;

    public ShiftDialog(Window owner, int w) {
        super(owner, "shift");
        columns = number("shift.columns", 1, 1 - w, w - 1);
        explain(DeskTexts.of("shift.explain", w));
    }

    public int columns() {
        return value(columns);
    }

    @Override
    protected Optional<String> objection() {
        return value(columns) == 0 ? Optional.of(DeskTexts.of("shift.objection")) : Optional.empty();
    }
}
