package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;

/** A rule about one stitch and what lies under it in its fabric column. */
interface StitchRule<V extends Violation.OfStitch> extends Rule<V> {
    /** Which of the stitches that are looked at break the rule, as a bit set like theirs. */
    long flagged(StitchPlanes look);

    /** What is to be known about a stitch that breaks the rule. */
    V violation(Chart chart, Place stitch);
}
