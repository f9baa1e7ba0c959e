package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch as the first or last of a side: it stands on a corner chain, and under that there is nothing of its side. */
final class PastCorner implements StitchRule<Violation.PastCorner> {
    @Override
    public String id() {
        return "past-corner";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.longsAtEnds();
    }

    @Override
    public Violation.PastCorner violation(Chart chart, Place stitch) {
        return new Violation.PastCorner(stitch);
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.PastCorner violation) {
        return List.of(Remedies.takeOut(verdict, violation.stitch()), Remedies.move(verdict, violation.stitch()));
    }
}
