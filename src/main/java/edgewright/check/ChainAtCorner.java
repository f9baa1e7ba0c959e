package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A chain as the first or last stitch of a side: nothing is then worked into the corner below to hold the corner. */
final class ChainAtCorner implements StitchRule {
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
    public List<Object> values(Chart chart, Place place) {
        return List.of(PastCorner.cornerOf(place));
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(Remedies.fillIn(flag.place()));
    }
}
