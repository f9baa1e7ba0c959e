package edgewright.desk;

import java.awt.Window;
import java.util.Optional;
import javax.swing.JSpinner;

/** Asks by how many columns the repeat is to be shifted. */
final class ShiftDialog extends FormDialog {
    private final JSpinner columns;

    ShiftDialog(Window owner, int w) {
        super(owner, "shift");
        columns = number("shift.columns", 1, 1 - w, w - 1);
        explain(Texts.of("shift.explain", w));
    }

    int columns() {
        return value(columns);
    }

    @Override
    Optional<String> objection() {
        return value(columns) == 0 ? Optional.of(Texts.of("shift.objection")) : Optional.empty();
    }
}
