package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Yarn;
import java.util.List;
import java.util.stream.Stream;

/**
 * A long stitch that lands on a round worked in another yarn, so that it is no line of its own colour. A corner chain belongs
 * to its round. The base round has no yarn in the chart, so nothing is said of round 2.
 */
final class OtherYarn implements StitchRule {
    @Override
    public String id() {
        return "other-yarn";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.isOverOtherYarn() ? look.landing() : 0;
    }

    @Override
    public List<Object> values(Chart chart, Place place) {
        return List.of(chart.yarnOf(place.round()), place.round() - 2, chart.yarnOf(place.round() - 2));
    }

    @Override
    public List<Stream<Remedy>> remedies(Verdict verdict, Violation flag) {
        Chart chart = verdict.chart();
        int round = flag.place().round();
        Yarn below = chart.yarnOf(round - 2);
        Remedy sameYarn =
                new Remedy("change-yarn", List.of(round, below), edited -> Edits.changeYarn(edited, round, below.id()));
        return List.of(Stream.of(sameYarn), Remedies.move(verdict, flag.place()), Remedies.takeOut(flag.place()));
    }
}
