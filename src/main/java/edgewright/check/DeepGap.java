package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A chain directly above a chain inside the side: a hole two rounds high. A chain above a corner chain is another matter. */
final class DeepGap implements StitchRule<Violation.DeepGap> {
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
        return look.chainsOnChains();
    }

    @Override
    public Violation.DeepGap violation(Chart chart, Place stitch) {
        return new Violation.DeepGap(stitch);
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.DeepGap violation) {
        return List.of(Remedies.fillIn(violation.stitch()), Remedies.backLoopBelow(verdict, violation.stitch()));
    }
}
