package edgewright.check;

import edgewright.chart.Place;
import java.util.List;

/**
 * That a rule is broken somewhere: a finding before it is tied to one chart, so that verdicts on two charts can share it.
 *
 * @param values what the rule's sentence has to name
 */
record Flag(Rule rule, Where where, List<Object> values) {
    static final Flag[] NONE = {};

    static Flag at(Rule rule, Place place, Object... values) {
        return new Flag(rule, Where.at(place), List.of(values));
    }

    /** Whether it is the same rule at the same place, whatever there is to say about it. */
    boolean isSameTrouble(Flag other) {
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
