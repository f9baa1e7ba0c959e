package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch that lands on a chain inside the side, where there is a gap and no stitch. */
final class LandsOnChain implements StitchRule {
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
        return look.landing() & look.chainsTwoBelow();
    }

    @Override
    public List<Object> values(Chart chart, Place place) {
        return List.of(place.round() - 2);
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(
                Remedies.backLoopTwoBelow(verdict, flag.place()),
                Remedies.takeOut(flag.place()),
                Remedies.move(verdict, flag.place()));
    }
}
