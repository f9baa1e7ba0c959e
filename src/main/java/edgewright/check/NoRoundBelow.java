package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch in round 1: there is no round two below it. Round 2 lands on the base round, which is fine. */
final class NoRoundBelow implements StitchRule<Violation.NoRoundBelow> {
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
    public Violation.NoRoundBelow violation(Chart chart, Place stitch) {
        return new Violation.NoRoundBelow(stitch);
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.NoRoundBelow violation) {
        return List.of(Remedies.move(verdict, violation.stitch()), Remedies.takeOut(verdict, violation.stitch()));
    }
}
