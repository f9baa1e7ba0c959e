package edgewright.assist.letter;

import edgewright.chart.Chart;
import java.util.List;

/** What came of a line of text. */
public sealed interface LetterAnswer {
    /** A band with the text. */
    record Band(Chart chart) implements LetterAnswer {}

    /** The alphabet has not all the letters. */
    record Missing(List<String> characters) implements LetterAnswer {
        public Missing {
            characters = List.copyOf(characters);
        }
    }

    /** There is nothing to be seen in the text. */
    record NoText() implements LetterAnswer {}

    /** It would have more stitches in a repeat, or rounds, than a chart may. */
    record TooLong(int stitches) implements LetterAnswer {}

    /** The chart it is to be like has but one yarn, so nothing would be seen. */
    record OneYarn() implements LetterAnswer {}
}
