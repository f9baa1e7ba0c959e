package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch that lands in a corner chain, in a chart that keeps its corner chains free of long stitches. */
final class LandsOnCornerChain implements StitchRule<Violation.LandsOnCornerChain> {
    @Override
    public String id() {
        return "lands-on-corner-chain";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.areCornerChainsClosed() ? look.landingInCornerChains() : 0;
    }

    @Override
    public Violation.LandsOnCornerChain violation(Chart chart, Place stitch) {
        return new Violation.LandsOnCornerChain(stitch, Remedies.landingRound(chart, stitch));
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.LandsOnCornerChain violation) {
        return List.of(
                Remedies.allowCornerChains(),
                Remedies.takeOut(verdict, violation.stitch()),
                Remedies.move(verdict, violation.stitch()));
    }
}
