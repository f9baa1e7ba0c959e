package edgewright.words.grammar;

import edgewright.chart.Stitch;
import java.util.Optional;

/**
 * A word, a few words that go together, a number or a sign of a text, and where it stands.
 *
 * @param text as it stands in the text
 * @param number its value if it is a number or an ordinal in digits, else 0; {@link #TOO_LARGE} if it has more than six digits
 * @param stitch what it is a name for, if it is a name of a whole stitch
 * @param line from 1
 * @param column of its first character, from 1
 * @param end the column after its last character
 */
public record Lexeme(Concept concept, String text, int number, Optional<Stitch> stitch, int line, int column, int end) {
    /** Stands for every number that no border has. */
    static final int TOO_LARGE = 1_000_000;

    public boolean is(Concept other) {
        return concept == other;
    }
}
