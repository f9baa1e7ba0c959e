package edgewright.booklet.choice;

import edgewright.chart.Terms;
import java.util.List;

/** The terms of the words in one file: one of the two, or both one after the other. */
public enum PrintedTerms {
    UK,
    US,
    BOTH;

    /** These terms alone. */
    public static PrintedTerms of(Terms terms) {
        return terms == Terms.US ? US : UK;
    }

    /** The terms in the order in which they are printed; at least one. */
    public List<Terms> inTurn() {
        return switch (this) {
            case UK -> List.of(Terms.UK);
            case US -> List.of(Terms.US);
            case BOTH -> List.of(Terms.UK, Terms.US);
        };
    }
}
