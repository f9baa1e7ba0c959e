package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.CornerEnd;
import edgewright.chart.Place;
import edgewright.chart.Section;
import java.util.List;
import java.util.stream.Stream;

/** A long stitch as the first or last of a side: it stands on a corner chain, and under that there is nothing of its side. */
final class PastCorner implements StitchRule {
    @Override
    public String id() {
        return "past-corner";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.longsAtEnds();
    }

    @Override
    public List<Object> values(Chart chart, Place place) {
        return List.of(cornerOf(place));
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        return List.of(Remedies.takeOut(flag.place()), Remedies.move(verdict, flag.place()));
    }

    /** The corner that a stitch at an end of a side is next to. */
    static CornerEnd cornerOf(Place place) {
        return place.section() == Section.FROM_CORNER ? CornerEnd.START : CornerEnd.NEXT;
    }
}
