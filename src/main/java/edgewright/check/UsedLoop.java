package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch directly above a plain stitch, which is worked through both loops and so leaves none to land in. */
final class UsedLoop implements StitchRule<Violation.UsedLoop> {
    @Override
    public String id() {
        return "used-loop";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.landingInTakenLoops();
    }

    @Override
    public Violation.UsedLoop violation(Chart chart, Place stitch) {
        return new Violation.UsedLoop(stitch, Remedies.landingRound(chart, stitch));
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.UsedLoop violation) {
        return List.of(
                Remedies.backLoopBelow(verdict, violation.stitch()),
                Remedies.takeOut(verdict, violation.stitch()),
                Remedies.move(verdict, violation.stitch()));
    }
}
