package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/**
 * A long stitch that lands on a round worked in another yarn, so that it is no line of its own colour. A corner chain belongs
 * to its round. The base round has no yarn in the chart, so nothing is said of round 2.
 */
final class OtherYarn implements StitchRule<Violation.OtherYarn> {
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
        return look.landingOnOtherYarn();
    }

    @Override
    public Violation.OtherYarn violation(Chart chart, Place stitch) {
        int landing = Remedies.landingRound(chart, stitch);
        return new Violation.OtherYarn(stitch, chart.yarnOf(stitch.round()), landing, chart.yarnOf(landing));
    }

    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.OtherYarn violation) {
        Place stitch = violation.stitch();
        return List.of(
                Stream.of(new RemedyEdit.ChangeYarn(stitch.round(), violation.landing())),
                Remedies.move(verdict, stitch),
                Remedies.takeOut(verdict, stitch));
    }
}
