package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;

/** A rule about one stitch and what lies under it in its fabric column. */
interface StitchRule extends Rule {
    /** Which of the stitches that are looked at break the rule, as a bit set like theirs. */
    long flagged(StitchPlanes look);

    /** What the sentence has to name about a stitch that breaks the rule. */
    List<Object> values(Chart chart, Place place);
}
