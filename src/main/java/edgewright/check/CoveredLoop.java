package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch directly above a long stitch, which lies in front of the loop that the upper one wants. */
final class CoveredLoop implements StitchRule<Violation.CoveredLoop> {
    @Override
    public String id() {
        return "covered-loop";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.landingBehindLongs();
    }

    @Override
    public Violation.CoveredLoop violation(Chart chart, Place stitch) {
        return new Violation.CoveredLoop(stitch);
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.CoveredLoop violation) {
        return List.of(
                Remedies.takeOut(verdict, violation.stitch()),
                Remedies.move(verdict, violation.stitch()),
                Remedies.backLoopBelow(verdict, violation.stitch()));
    }
}
