package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A chain directly above a chain inside the side: a hole two rounds high. A chain above a corner chain is another matter. */
final class DeepGap implements StitchRule {
    @Override
    public String id() {
        return "deep-gap";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.chains() & look.chainsBelow();
    }

    @Override
    public List<Object> values(Chart chart, Place place) {
        return List.of(place.round() - 1);
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(Remedies.fillIn(flag.place()), Remedies.backLoopBelow(verdict, flag.place()));
    }
}
