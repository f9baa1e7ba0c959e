package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch directly above a plain stitch, which is worked through both loops and so leaves none to land in. */
final class UsedLoop implements StitchRule {
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
        return look.landing() & look.plainsBelow();
    }

    @Override
    public List<Object> values(Chart chart, Place place) {
        return List.of(place.round() - 1, place.round() - 2);
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(
                Remedies.backLoopBelow(verdict, flag.place()),
                Remedies.takeOut(flag.place()),
                Remedies.move(verdict, flag.place()));
    }
}
