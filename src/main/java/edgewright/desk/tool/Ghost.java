package edgewright.desk.tool;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.check.Checker;
import edgewright.check.Finding;
import edgewright.check.FindingPlace;
import edgewright.check.Verdict;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * What would come of an edit before it is made.
 *
 * @param verdict what the checker would say of the chart as it would be
 * @param lands the stitches that would be worked, those that are so already among them
 * @param breaks the stitches with findings that are not there now
 * @param findings how many findings more than now there would be; negative for fewer
 */
public record Ghost(Verdict verdict, Set<Place> lands, Set<Place> breaks, int findings) {
    /** A rule broken at a stitch. */
    private record Breach(String rule, FindingPlace at) {
        static Breach of(Finding finding) {
            return new Breach(finding.rule(), finding.place());
        }
    }

    /** What would come of a chart in the place of the one that was judged. */
    static Ghost of(Verdict now, Chart edited, Set<Place> lands) {
        Verdict then = Checker.recheck(now, edited);
        Set<Breach> known = new LinkedHashSet<>();
        now.findings().forEach(finding -> known.add(Breach.of(finding)));
        Set<Place> breaks = new LinkedHashSet<>();
        for (Finding finding : then.findings()) {
            if (finding.place() instanceof FindingPlace.OfStitch of && !known.contains(Breach.of(finding))) {
                breaks.add(of.stitch());
            }
        }
        return new Ghost(then, lands, breaks, then.count().all() - now.count().all());
    }

    /** The chart as it would be. */
    public Chart chart() {
        return verdict.chart();
    }
}
