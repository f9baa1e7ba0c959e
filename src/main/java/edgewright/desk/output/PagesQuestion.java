package edgewright.desk.output;

import edgewright.chart.Chart;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.file.ImprintFiles;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.Optional;
import java.util.function.Consumer;

/** Asks how the pages of a pattern are to be, once the files that its chart names were read, and keeps the answer for next time. */
record PagesQuestion(Window window, Questions asking, ChartView view, Settings settings, OwnFilesJob ownFiles) {
    /**
     * Asks, and goes on with what was answered; with nothing if nobody wants pages.
     *
     * @param errors how many error findings the chart has
     * @param use what the pages are for
     * @param order the piece that is proposed for them
     */
    void ask(Chart chart, int errors, PublishDialog.Use use, Optional<PieceOrder> order, Consumer<PublishDialog> goOn) {
        Messages says = view.language().messages("desk/output");
        ownFiles.with(chart, matter -> {
            PublishDialog dialog = new PublishDialog(
                    window,
                    chart,
                    view,
                    errors,
                    settings,
                    use,
                    matter,
                    () -> asking.companionToOpen(says.text("files-imprints"), ImprintFiles.ENDING));
            order.ifPresent(dialog::forPiece);
            if (dialog.ask()) {
                dialog.remember();
                goOn.accept(dialog);
            }
        });
    }
}
