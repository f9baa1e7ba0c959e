package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch that lands on a long stitch, in a chart that does not allow stacking. */
final class LandsOnLong implements StitchRule<Violation.LandsOnLong> {
    @Override
    public String id() {
        return "lands-on-long";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.isStackingAllowed() ? 0 : look.landingOnLongs();
    }

    @Override
    public Violation.LandsOnLong violation(Chart chart, Place stitch) {
        return new Violation.LandsOnLong(stitch, Remedies.landingRound(chart, stitch));
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.LandsOnLong violation) {
        return List.of(
                Remedies.allowStacking(),
                Remedies.takeOut(verdict, violation.stitch()),
                Remedies.move(verdict, violation.stitch()),
                Remedies.backLoopAtLanding(verdict, violation.stitch()));
    }
}
