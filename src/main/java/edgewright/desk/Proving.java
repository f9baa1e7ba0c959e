package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.proof.Trials;
import edgewright.proof.Trials.Trial;
import edgewright.words.Options;
import java.awt.Window;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;

/** Works the words of the chart back, beside the event thread, and shows what came of it. */
final class Proving {
    private final Window window;
    private final Workbench bench;
    private final View view;
    private final Jobs jobs;

    Proving(Window window, Workbench bench, View view, Jobs jobs) {
        this.window = window;
        this.bench = bench;
        this.view = view;
        this.jobs = jobs;
    }

    /** Asks for which sizes, then works the words of the chart as it is now. */
    void prove() {
        Chart chart = bench.chart();
        ProveDialog dialog = new ProveDialog(window, chart.terms());
        if (!dialog.ask()) {
            return;
        }
        Options options = Options.of(chart).withTerms(dialog.terms()).withCounting(view.counting());
        List<PerSide> sizes = dialog.sizes();
        jobs.beginStoppable(
                Texts.of("job.prove"),
                worker -> work(chart, options, sizes, worker),
                this::show,
                problem -> Texts.of(problem instanceof CancellationException ? "job.cancelled" : "news.notProved"));
    }

    private static List<Trial> work(Chart chart, Options options, List<PerSide> sizes, Jobs.Worker worker) {
        AtomicInteger done = new AtomicInteger();
        return Trials.run(
                chart,
                options,
                sizes,
                trial -> worker.progress(100 * done.incrementAndGet() / sizes.size()),
                worker::cancelled);
    }

    private String show(List<Trial> trials) {
        new ProofWindow(window, trials, view.counting()).setVisible(true);
        long failed = trials.stream().filter(trial -> !trial.agrees()).count();
        return Texts.of(failed == 0 ? "proof.agrees" : "proof.fails", trials.size(), failed);
    }
}
