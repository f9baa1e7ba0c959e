package edgewright.check;

import edgewright.chart.Chart;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * An edit that does away with a finding and brings no error. It is made for one chart and serves that chart only; to undo it
 * is to go back to that chart, which never changes.
 *
 * <p>Two remedies are equal if they have the same id and values, whatever chart they were made for.
 */
public final class Remedy {
    private final String id;
    private final List<Object> values;
    private final UnaryOperator<Chart> edit;

    Remedy(String id, List<Object> values, UnaryOperator<Chart> edit) {
        this.id = id;
        this.values = List.copyOf(values);
        this.edit = edit;
    }

    /** What kind of remedy it is: small letters and hyphens, the same for all charts. Its sentence is found by it. */
    public String id() {
        return id;
    }

    /** What the sentence has to name, in the order in which the sentence of this id takes it. */
    public List<Object> values() {
        return values;
    }

    /**
     * The edit.
     *
     * @param chart the chart that the finding is about
     */
    public Chart applyTo(Chart chart) {
        return edit.apply(chart);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Remedy that && id.equals(that.id) && values.equals(that.values);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, values);
    }

    @Override
    public String toString() {
        return id + values;
    }
}
