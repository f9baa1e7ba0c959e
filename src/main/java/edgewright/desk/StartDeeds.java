package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.desk.start.StartPage;
import java.nio.file.Path;
import java.util.function.Consumer;

/** What the start page does, done by the desk. */
record StartDeeds(Consumer<String> command, Consumer<Path> opening, Consumer<Chart> laying, Runnable leaving)
        implements StartPage.Deeds {
    @Override
    public void begin() {
        command.accept("new");
    }

    @Override
    public void readText() {
        command.accept("readText");
    }

    @Override
    public void open(Path file) {
        opening.accept(file);
    }

    @Override
    public void lay(Chart chart) {
        laying.accept(chart);
    }

    @Override
    public void leave() {
        leaving.run();
    }
}
