package edgewright.chart;

import java.util.Objects;

/**
 * What stands over a design: how it is called, who made it, what the designer has to say, and in whose words.
 *
 * @param title in one line, as {@link CleanText#oneLine} leaves it; so is the designer
 * @param notes may have several lines, as {@link CleanText#lines} leaves them
 * @param terms the terms the pattern is written in unless others are asked for
 * @param own photographs, texts and imprint of the designer's own
 */
public record Heading(String title, String designer, String notes, Terms terms, OwnMatter own) {
    public Heading {
        title = CleanText.oneLine(title);
        designer = CleanText.oneLine(designer);
        notes = CleanText.lines(notes);
        Objects.requireNonNull(terms);
        Objects.requireNonNull(own);
    }

    /** With nothing of the designer's own beside the notes. */
    public Heading(String title, String designer, String notes, Terms terms) {
        this(title, designer, notes, terms, OwnMatter.NONE);
    }

    /** A title alone, with the pattern in UK terms. */
    public static Heading of(String title) {
        return new Heading(title, "", "", Terms.UK);
    }

    /** This heading with another title. */
    public Heading withTitle(String other) {
        return new Heading(other, designer, notes, terms, own);
    }

    /** This heading with another designer. */
    public Heading withDesigner(String other) {
        return new Heading(title, other, notes, terms, own);
    }

    /** This heading with other notes. */
    public Heading withNotes(String other) {
        return new Heading(title, designer, other, terms, own);
    }

    /** This heading over a pattern in other terms. */
    public Heading withTerms(Terms other) {
        return new Heading(title, designer, notes, other, own);
    }

    /** This heading with other matter of the designer's own. */
    public Heading withOwn(OwnMatter other) {
        return new Heading(title, designer, notes, terms, other);
    }
}
