package edgewright.desk.output;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.proof.ProofSentences;
import edgewright.proof.SizeProofs;
import edgewright.proof.SizeProofs.Trial;
import edgewright.texts.Messages;
import edgewright.words.write.WordingOptions;
import java.awt.Window;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;

/** Works the words of the chart back, beside the event thread, and shows what came of it. */
public final class ProofCommands {
    private final Messages says;
    private final Window window;
    private final Workbench bench;
    private final ChartView view;
    private final Jobs jobs;

    public ProofCommands(Window window, Workbench bench, ChartView view, Jobs jobs) {
        this.window = window;
        this.bench = bench;
        this.view = view;
        this.jobs = jobs;
        says = view.language().messages("desk/output");
    }

    /** Asks for which sizes, then works the words of the chart as it is now. */
    public void prove() {
        Chart chart = bench.chart();
        ProveDialog dialog = new ProveDialog(window, chart.terms(), view.language());
        if (!dialog.ask()) {
            return;
        }
        WordingOptions options = WordingOptions.of(chart, view.language())
                .withTerms(dialog.terms())
                .withCounting(view.counting());
        List<PerSide<Integer>> sizes = dialog.sizes();
        jobs.beginStoppable(
                says.text("job-prove"),
                worker -> work(chart, options, sizes, worker),
                this::show,
                problem -> says.text(problem instanceof CancellationException ? "job-cancelled" : "news-proofFailed"));
    }

    private List<Trial> work(Chart chart, WordingOptions options, List<PerSide<Integer>> sizes, Jobs.Worker worker) {
        AtomicInteger done = new AtomicInteger();
        return SizeProofs.run(
                chart,
                options,
                sizes,
                new ProofSentences(view.language()),
                trial -> worker.progress(100 * done.incrementAndGet() / sizes.size()),
                worker::cancelled);
    }

    private String show(List<Trial> trials) {
        new ProofWindow(window, trials, view.counting(), view.language()).setVisible(true);
        return ProofWindow.outcome(trials, says);
    }
}
