package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch that lands on a long stitch, in a chart that does not allow stacking. */
final class LandsOnLong implements StitchRule {
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
        return look.isStackingAllowed() ? 0 : look.landing() & look.longsTwoBelow();
    }

    @Override
    public List<Object> values(Chart chart, Place place) {
        return List.of(place.round() - 2);
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(
                Remedies.allowStacking(),
                Remedies.takeOut(flag.place()),
                Remedies.move(verdict, flag.place()),
                Remedies.backLoopTwoBelow(verdict, flag.place()));
    }
}
