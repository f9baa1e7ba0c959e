package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Yarn;
import java.util.List;
import java.util.stream.Stream;

/**
 * A long stitch that covers a stitch of its own yarn, so that nothing of it is seen. The base round has no yarn in the chart, and
 * no long stitch covers it that could be worked.
 */
final class UnseenLong implements StitchRule<Violation.UnseenLong> {
    @Override
    public String id() {
        return "unseen-long";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public long flagged(StitchPlanes look) {
        return look.landingOverOwnYarn();
    }

    @Override
    public Violation.UnseenLong violation(Chart chart, Place stitch) {
        return new Violation.UnseenLong(stitch, chart.yarnOf(stitch.round()));
    }

    /** Either of the two rounds can be worked in another yarn, whichever of the chart does it. */
    @Override
    public List<Stream<RemedyEdit>> remedies(Verdict verdict, Violation.UnseenLong unseen) {
        Place stitch = unseen.stitch();
        List<Yarn> others = verdict.chart().yarns().stream()
                .filter(yarn -> !yarn.equals(unseen.yarn()))
                .toList();
        return List.of(
                Remedies.takeOut(verdict, stitch),
                Remedies.move(verdict, stitch),
                others.stream().map(yarn -> new RemedyEdit.ChangeYarn(stitch.round() - 1, yarn)),
                others.stream().map(yarn -> new RemedyEdit.ChangeYarn(stitch.round(), yarn)));
    }
}
