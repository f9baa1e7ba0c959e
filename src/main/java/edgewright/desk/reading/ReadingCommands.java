package edgewright.desk.reading;

import edgewright.chart.Chart;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import java.awt.Window;
import java.util.Optional;
import java.util.function.Consumer;

/** Opens the window in which the words of others are read, once; what was pasted there stays until the desk is closed. */
public final class ReadingCommands {
    private final Window owner;
    private final Workbench bench;
    private final ChartView view;
    private final Jobs jobs;
    private final Questions asking;
    private final Consumer<Chart> begin;
    private Optional<ReadingWindow> window = Optional.empty();

    /** @param begin lays a new chart on the bench, after asking about unsaved work */
    public ReadingCommands(
            Window owner, Workbench bench, ChartView view, Jobs jobs, Questions asking, Consumer<Chart> begin) {
        this.owner = owner;
        this.bench = bench;
        this.view = view;
        this.jobs = jobs;
        this.asking = asking;
        this.begin = begin;
    }

    /** Shows the window. */
    public void read() {
        if (window.isEmpty()) {
            window = Optional.of(new ReadingWindow(owner, bench, view, jobs, asking, begin));
        }
        window.get().setVisible(true);
    }
}
