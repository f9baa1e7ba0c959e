package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch that lands on a chain inside the side, where there is a gap and no stitch. */
final class LandsOnChain implements StitchRule<Violation.LandsOnChain> {
    @Override
    public String id() {
        return "lands-on-chain";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.landingOnChains();
    }

    @Override
    public Violation.LandsOnChain violation(Chart chart, Place stitch) {
        return new Violation.LandsOnChain(stitch, Remedies.landingRound(chart, stitch));
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.LandsOnChain violation) {
        return List.of(
                Remedies.backLoopAtLanding(verdict, violation.stitch()),
                Remedies.takeOut(verdict, violation.stitch()),
                Remedies.move(verdict, violation.stitch()));
    }
}
