package edgewright.desk.journal;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.desk.parts.ShortText;
import edgewright.desk.work.Workbench;
import edgewright.file.ReadResult;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Dialog.ModalityType;
import java.awt.Window;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Shows what others have made of the file of a chart beside the chart on the desk, and asks which is to be gone on with. It stays
 * beside the work and follows it.
 */
final class ChangedFileQuestion {
    private static final int MOST_OF_NAME = 60;

    private final Workbench bench;
    private final ComparedCharts charts;
    private final ChoiceDialog dialog;
    private ReadResult.Read theirs;
    private Optional<Chart> shown = Optional.empty();

    /** What can be done about it. */
    interface Answers {
        /** The chart on the desk becomes that of the file, as an edit. */
        void reload(ReadResult.Read theirs);

        /** The chart on the desk is saved in a file of its own, and gone on with. */
        void keepBoth();

        /** The chart on the desk stays as it is, and so does the file. */
        void goOn();
    }

    ChangedFileQuestion(
            Window owner, Workbench bench, Path file, ReadResult.Read theirs, Answers answers, Language language) {
        this.bench = bench;
        this.theirs = theirs;
        Messages says = language.messages("desk/journal");
        charts = new ComparedCharts(Optional.of(says.text("changed-here")), says.text("changed-there"), language);
        String name = ShortText.of(String.valueOf(file.getFileName()), MOST_OF_NAME);
        dialog = new ChoiceDialog(
                owner, ModalityType.MODELESS, "changedFile", says.text("changed-sentence", arg("file", name)), charts);
        dialog.setTitle(says.text("changed-title"));
        dialog.choice("reload", says.text("changed-reload"), () -> answers.reload(this.theirs));
        dialog.choice("keepBoth", says.text("changed-keepBoth"), answers::keepBoth);
        dialog.choice("goOn", says.text("changed-goOn"), answers::goOn);
        dialog.unchosen(answers::goOn);
        follow();
        dialog.open();
    }

    /** The file has been changed once more. */
    void show(ReadResult.Read now) {
        theirs = now;
        shown = Optional.empty();
        follow();
    }

    /** Shows the chart on the desk as it is now. */
    void follow() {
        Chart mine = bench.chart();
        if (shown.filter(mine::equals).isEmpty()) {
            shown = Optional.of(mine);
            charts.show(Optional.of(mine), theirs.chart());
        }
    }

    /** The question has been overtaken by what was done meanwhile. */
    void drop() {
        dialog.dispose();
    }
}
