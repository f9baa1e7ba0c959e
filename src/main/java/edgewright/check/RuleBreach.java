package edgewright.check;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import java.util.List;
import java.util.stream.Stream;

/** A rule and how it is broken: a finding before it is tied to one chart, so that verdicts on two charts can share it. */
record RuleBreach<V extends Violation>(Rule<V> rule, V violation) {
    /** That a stitch breaks this rule. */
    static <V extends Violation.OfStitch> RuleBreach<V> at(StitchRule<V> rule, Chart chart, Place stitch) {
        return new RuleBreach<>(rule, rule.violation(chart, stitch));
    }

    /** Whether it is the same rule at the same place, whatever there is to say about it. */
    boolean isSameTrouble(RuleBreach<?> other) {
        return rule == other.rule && place().equals(other.place());
    }

    boolean isError() {
        return rule.severity() == Severity.ERROR;
    }

    FindingPlace place() {
        return violation.place();
    }

    /** The stitch that it is about; only for rules about stitches. */
    Place stitch() {
        return place().oneStitch().orElseThrow();
    }

    /** What may help against it; see {@link Rule#remedies}. */
    List<Stream<RemedyEdit>> remedies(Verdict verdict) {
        return rule.remedies(verdict, violation);
    }
}
