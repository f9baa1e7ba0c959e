package edgewright.check;

import edgewright.chart.Place;
import java.util.List;

/**
 * That a rule is broken somewhere: a finding before it is tied to one chart, so that verdicts on two charts can share it.
 *
 * @param values what the rule's sentence has to name
 */
record Violation(Rule rule, FindingPlace where, List<Object> values) {
    static final Violation[] NONE = {};

    static Violation at(Rule rule, Place place, Object... values) {
        return new Violation(rule, FindingPlace.at(place), List.of(values));
    }

    /** Whether it is the same rule at the same place, whatever there is to say about it. */
    boolean isSameTrouble(Violation other) {
        return rule == other.rule && where.equals(other.where);
    }

    boolean isError() {
        return rule.severity() == Severity.ERROR;
    }

    /** The stitch that it is about; only for flags of rules about stitches. */
    Place place() {
        return where.stitch().orElseThrow();
    }
}
