package edgewright.check;

import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import java.util.List;

/**
 * That a chart breaks a rule somewhere, as data; {@link FindingSentences} makes the sentence.
 *
 * <p>Two findings are equal if they have the same rule and the same violation of it: remedies follow from the finding and its
 * chart.
 */
public final class Finding {
    private final RuleBreach<?> breach;
    private final Verdict verdict;
    /** Worked out when first asked for, since each has to be tried. Whoever is second does it again, to the same result. */
    private List<Remedy> remedies;

    Finding(RuleBreach<?> breach, Verdict verdict) {
        this.breach = breach;
        this.verdict = verdict;
    }

    /** The id of the rule that is broken. */
    public String rule() {
        return breach.rule().id();
    }

    /** The weight of that rule. */
    public Severity severity() {
        return breach.rule().severity();
    }

    /** What the finding is about. */
    public FindingPlace place() {
        return breach.place();
    }

    /** How the rule is broken there. */
    public Violation violation() {
        return breach.violation();
    }

    /**
     * The edits that help; each was tried on the chart, did away with this finding and brought no other, neither error nor
     * warning. They stand in the order of how many cells of the fabric change their colour, least first; one that leaves the
     * fabric as it is and has a rule say less in the whole chart stands last. May be empty.
     */
    public List<Remedy> remedies() {
        List<Remedy> known = remedies;
        if (known == null) {
            known = RemedyTrial.serving(verdict, breach);
            remedies = known;
        }
        return known;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Finding that && breach.equals(that.breach);
    }

    @Override
    public int hashCode() {
        return breach.hashCode();
    }

    @Override
    public String toString() {
        return place().accept(new FindingPlace.Visitor<String>() {
            @Override
            public String stitch(Place stitch) {
                return rule() + ", " + stitch;
            }

            @Override
            public String section(int round, Section section) {
                return rule() + ", round " + round + ", " + section.member();
            }

            @Override
            public String round(int round) {
                return rule() + ", round " + round;
            }

            @Override
            public String side(Side side) {
                return rule() + ", " + side;
            }
        });
    }
}
