package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch directly above a long stitch, which lies in front of the loop that the upper one wants. */
final class CoveredLoop implements StitchRule {
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
        return look.landing() & look.longsBelow();
    }

    @Override
    public List<Object> values(Chart chart, Place place) {
        return List.of(place.round() - 1);
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(
                Remedies.takeOut(flag.place()),
                Remedies.move(verdict, flag.place()),
                Remedies.backLoopBelow(verdict, flag.place()));
    }
}
