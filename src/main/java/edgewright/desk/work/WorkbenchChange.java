package edgewright.desk.work;

import edgewright.chart.Chart;

/**
 * What has happened on the workbench. Rounds that are the same object before and after have not changed, so whoever paints
 * can see which part is to be painted again.
 *
 * @param kind what has changed
 * @param before the chart before; the same as {@code after} unless the chart has changed
 */
public record WorkbenchChange(Kind kind, Chart before, Chart after) {
    /** The kinds of change. */
    public enum Kind {
        /** Another chart lies on the bench; nothing of the old one is left. */
        OPENED,
        /** The chart was edited, or an edit undone or done again. */
        EDITED,
        /** A transaction was committed, and what it made is now an edit with a name. The chart was told of before. */
        DRAWN,
        /** The cursor stands elsewhere. */
        CURSOR,
        /** Another stitch is chosen. */
        STITCH,
        /** The chart was saved. */
        SAVED
    }

    /** Whether the chart itself is another. */
    public boolean ofChart() {
        return kind == Kind.OPENED || kind == Kind.EDITED;
    }
}
