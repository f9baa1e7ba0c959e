package edgewright.desk.work;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The charts of a session, one after each edit, and where in them the maker stands. Without limit: a chart shares every round
 * that an edit leaves alone with the chart before it.
 */
final class History {
    /**
     * A chart and how it came about.
     *
     * @param edit the name of the edit that made it, for people; empty for the chart that was opened
     * @param cursor where the edit was made; undoing and redoing it leads back there
     */
    record Step(String edit, Chart chart, Place cursor) {}

    private final List<Step> steps = new ArrayList<>();
    private int now;

    History(Chart opened, Place cursor) {
        steps.add(new Step("", opened, cursor));
    }

    Chart chart() {
        return steps.get(now).chart();
    }

    /** Goes on from the present chart; whatever had been undone is forgotten. */
    void add(String edit, Chart chart, Place cursor) {
        steps.subList(now + 1, steps.size()).clear();
        steps.add(new Step(edit, chart, cursor));
        now++;
    }

    /** The name of the edit that {@link #undo} takes back; empty at the chart that was opened. */
    Optional<String> undoName() {
        return now == 0 ? Optional.empty() : Optional.of(steps.get(now).edit());
    }

    /** The name of the edit that {@link #redo} does again; empty if none was undone. */
    Optional<String> redoName() {
        return now == steps.size() - 1
                ? Optional.empty()
                : Optional.of(steps.get(now + 1).edit());
    }

    /**
     * Takes the last edit back.
     *
     * @return where that edit had been made
     * @throws IllegalStateException if there is none
     */
    Place undo() {
        if (now == 0) {
            throw new IllegalStateException("nothing to undo");
        }
        now--;
        return steps.get(now + 1).cursor();
    }

    /**
     * Does the next edit again.
     *
     * @return where it had been made
     * @throws IllegalStateException if none was undone
     */
    Place redo() {
        if (now == steps.size() - 1) {
            throw new IllegalStateException("nothing to redo");
        }
        now++;
        return steps.get(now).cursor();
    }
}
