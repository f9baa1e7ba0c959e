package edgewright.booklet.choice;

import java.util.Arrays;
import java.util.List;

/**
 * What a printed pattern can be made of, in the order in which the parts are printed unless another one is chosen. A new part
 * is a line here and a case in {@code PatternPages}; the options of the command and the list of the dialog follow.
 */
public enum BookletPart {
    /** Title, designer, a picture of the border, what the pattern is in and asks for. */
    COVER(Place.PATTERN),
    /** What is inside, and on which page. */
    CONTENTS(Place.ON_WISH),
    /** The first of the designer's own sections. */
    INTRODUCTION(Place.PATTERN),
    /** What is needed, tension, sizes, abbreviations, how the border is worked. */
    FACTS(Place.PATTERN),
    /** The chart, with how to read it and what its marks mean. */
    CHART(Place.PATTERN),
    /** The rounds in words, and those of a back layer. */
    WORDS(Place.PATTERN),
    /** How the techniques that the pattern uses are worked, with figures. */
    TECHNIQUES(Place.PATTERN),
    /** The table of counts. */
    COUNTS(Place.PATTERN),
    /** What is done at the end. */
    FINISHING(Place.PATTERN),
    /** The other sections of the designer's own, and the gallery. */
    SECTIONS(Place.PATTERN),
    /** For which sizes the words were worked back. */
    PROOF(Place.PATTERN),
    /** For each round what to work, count and see, with boxes to tick. */
    GUIDE(Place.WORKBOOK),
    /** Where counts are written down and put right with a pencil. */
    WORKSHEET(Place.WORKBOOK),
    /** Counts and measures of many sizes, what is picked up, the counts of a back layer. */
    SIZES(Place.WORKBOOK),
    /** How much yarn examples take, and each round. */
    YARN(Place.WORKBOOK);

    private enum Place {
        PATTERN,
        ON_WISH,
        WORKBOOK
    }

    private final Place place;

    BookletPart(Place place) {
        this.place = place;
    }

    /** Whether it belongs to the workbook, which a maker may do without. */
    public boolean isOfWorkbook() {
        return place == Place.WORKBOOK;
    }

    /** Whether it is in every pattern of which nothing else was said. */
    public boolean isOfPattern() {
        return place == Place.PATTERN;
    }

    /** The parts of the workbook. */
    public static List<BookletPart> ofWorkbook() {
        return Arrays.stream(values()).filter(BookletPart::isOfWorkbook).toList();
    }
}
