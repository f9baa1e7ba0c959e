package edgewright.check;

import java.util.List;
import java.util.Objects;

/**
 * That a chart breaks a rule somewhere, as data; {@link FindingSentences} makes the sentence.
 *
 * <p>Two findings are equal if they have the same rule, place and values: remedies follow from the finding and its chart.
 */
public final class Finding {
    private final Violation flag;
    private final Verdict verdict;
    /** Worked out when first asked for, since each has to be tried. Whoever is second does it again, to the same result. */
    private List<Remedy> remedies;

    Finding(Violation flag, Verdict verdict) {
        this.flag = flag;
        this.verdict = verdict;
    }

    /** The id of the rule that is broken. */
    public String rule() {
        return flag.rule().id();
    }

    /** The weight of that rule. */
    public Severity severity() {
        return flag.rule().severity();
    }

    /** What the finding is about. */
    public FindingPlace where() {
        return flag.where();
    }

    /** What the sentence has to name, in the order in which the sentence of this rule takes it. */
    public List<Object> values() {
        return flag.values();
    }

    /**
     * The edits that help, best first; each was tried on the chart, did away with this finding and brought no error. May be
     * empty.
     */
    public List<Remedy> remedies() {
        List<Remedy> known = remedies;
        if (known == null) {
            known = RemedyTrial.serving(verdict, flag);
            remedies = known;
        }
        return known;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Finding that
                && rule().equals(that.rule())
                && where().equals(that.where())
                && values().equals(that.values());
    }

    @Override
    public int hashCode() {
        return Objects.hash(rule(), where(), values());
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(rule());
        where().round().ifPresent(round -> text.append(", round ").append(round));
        where().section().ifPresent(section -> text.append(", ").append(section.member()));
        where().place().ifPresent(place -> text.append(' ').append(place));
        where().side().ifPresent(side -> text.append(", ").append(side));
        return text.toString();
    }
}
