package edgewright.check;

import edgewright.chart.Chart;

/**
 * An edit that does away with a finding and brings no other, neither error nor warning. It is made for one chart and serves that
 * chart only; to undo it is to go back to that chart, which never changes.
 *
 * @param edit what is done
 * @param changedCells how many cells of the fabric then show another colour; see {@link ChangedCells}
 */
public record Remedy(RemedyEdit edit, int changedCells) {
    /** What kind of remedy it is: small letters and hyphens, the same for all charts. */
    public String id() {
        return edit.id();
    }

    /**
     * The chart with the remedy done.
     *
     * @param chart the chart that the finding is about
     */
    public Chart applyTo(Chart chart) {
        return edit.applyTo(chart);
    }
}
