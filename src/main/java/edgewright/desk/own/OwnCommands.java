package edgewright.desk.own;

import edgewright.chart.Chart;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.Workbench;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;

/** What the desk does for the designer's own pages. */
public final class OwnCommands {
    private final Messages says;
    private final Window owner;
    private final Workbench bench;
    private final Questions asking;
    private final Language language;

    public OwnCommands(Window owner, Workbench bench, Questions asking, Language language) {
        this.owner = owner;
        this.bench = bench;
        this.asking = asking;
        this.language = language;
        says = language.messages("desk/own");
    }

    /** Asks for photographs, texts and imprint; one edit of the chart. */
    public void ownPages() {
        Chart before = bench.chart();
        OwnPagesDialog dialog = new OwnPagesDialog(
                owner, before.own(), bench.file().map(file -> new ChartFolder(file, asking, language)), language);
        if (dialog.ask()) {
            bench.edit(says.text("edit-own"), chart -> chart.withOwn(dialog.matter()));
        }
    }
}
