package edgewright.desk;

import static edgewright.texts.Arg.number;

import edgewright.chart.Yarn;
import edgewright.desk.dialogs.LettersDialog;
import edgewright.desk.dialogs.PropertiesDialog;
import edgewright.desk.dialogs.ShiftDialog;
import edgewright.desk.dialogs.SideDialog;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.YarnShelf;
import edgewright.desk.yarn.YarnDialog;
import edgewright.texts.Messages;
import java.awt.Window;

/** The edits that a form is filled in for: each asks, and edits the chart if the answer is yes. */
final class FormCommands {
    private final Window owner;
    private final Workbench bench;
    private final ChartView view;
    private final Messages says;

    FormCommands(Window owner, Workbench bench, ChartView view) {
        this.owner = owner;
        this.bench = bench;
        this.view = view;
        says = view.language().messages("desk");
    }

    /** Changes what goes for the whole chart. */
    void properties() {
        PropertiesDialog dialog = new PropertiesDialog(owner, bench.chart(), view.language());
        if (dialog.ask()) {
            bench.edit(says.text("edit-properties"), dialog::appliedTo);
        }
    }

    /** Changes the repeat and the corner sections. */
    void reshape() {
        SideDialog dialog = new SideDialog(owner, bench.chart().shape(), view.counting(), view.language());
        if (dialog.ask()) {
            ChartCommands.reshape(bench, dialog.shape());
        }
    }

    /** Shifts the repeat. */
    void shift() {
        ShiftDialog dialog = new ShiftDialog(owner, bench.chart().shape().w(), view.language());
        if (dialog.ask()) {
            ChartCommands.shiftRepeat(bench, dialog.columns());
        }
    }

    /** Writes the round of the cursor in letters. */
    void letters() {
        int round = bench.cursor().round();
        LettersDialog dialog = new LettersDialog(owner, bench.chart(), round, view.language());
        if (dialog.ask()) {
            bench.edit(
                    says.text("edit-letters", number("round", round)), chart -> chart.withRound(round, dialog.round()));
        }
    }

    /** Adds a yarn. */
    void addYarn() {
        String id = ChartCommands.freeYarnId(bench.chart());
        Yarn proposal = new Yarn(id, says.text("yarn-new"), YarnShelf.unlike(bench.chart()));
        YarnDialog dialog = YarnDialog.adding(owner, bench.chart(), proposal, view.language());
        if (dialog.ask()) {
            ChartCommands.addYarn(bench, dialog.yarn());
        }
    }

    /** Changes a yarn. */
    void changeYarn(Yarn yarn) {
        YarnDialog dialog = YarnDialog.changing(owner, bench.chart(), yarn, view.language());
        if (dialog.ask()) {
            ChartCommands.changeYarn(bench, yarn, dialog.yarn());
        }
    }
}
