package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch in round 1: there is no round two below it. Round 2 lands on the base round, which is fine. */
final class NoRoundBelow implements StitchRule {
    @Override
    public String id() {
        return "no-round-below";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.longsWithoutRoundBelow();
    }

    @Override
    public List<Object> values(Chart chart, Place place) {
        return List.of();
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(Remedies.move(verdict, flag.place()), Remedies.takeOut(flag.place()));
    }
}
