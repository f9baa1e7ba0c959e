package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch that lands in a corner chain, in a chart that keeps its corner chains free of long stitches. */
final class LandsOnCornerChain implements StitchRule {
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
    public List<Object> values(Chart chart, Place place) {
        return List.of(PastCorner.cornerOf(place), place.round() - 2);
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(
                Remedies.allowCornerChains(), Remedies.takeOut(flag.place()), Remedies.move(verdict, flag.place()));
    }
}
