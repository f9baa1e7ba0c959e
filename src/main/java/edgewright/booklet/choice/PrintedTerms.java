package edgewright.booklet.choice;

import edgewright.chart.Terms;
import java.util.List;
import java.util.stream.Stream;

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

    /** The terms whose measures lead: inches and yards only where nothing but US terms are told. */
    public Terms measuring() {
        return this == US ? Terms.US : Terms.UK;
    }

    /**
     * Measures in the order in which they are told, those of a table as well as the heads of its columns.
     *
     * @param metric in metres or centimetres
     * @param yards the same in yards or inches, told where US terms are
     */
    public <T> List<T> measures(List<T> metric, List<T> yards) {
        return switch (this) {
            case UK -> List.copyOf(metric);
            case US -> Stream.concat(yards.stream(), metric.stream()).toList();
            case BOTH -> Stream.concat(metric.stream(), yards.stream()).toList();
        };
    }
}
