package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A chain as the first or last stitch of a side: nothing is then worked into the corner below to hold the corner. */
final class ChainAtCorner implements StitchRule<Violation.ChainAtCorner> {
    @Override
    public String id() {
        return "chain-at-corner";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.chainsAtEnds();
    }

    @Override
    public Violation.ChainAtCorner violation(Chart chart, Place stitch) {
        return new Violation.ChainAtCorner(stitch);
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.ChainAtCorner violation) {
        return List.of(Remedies.fillIn(violation.stitch()));
    }
}
