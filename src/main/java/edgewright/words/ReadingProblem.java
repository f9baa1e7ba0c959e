package edgewright.words;

import java.util.Objects;

/**
 * A place in a text where reading stopped.
 *
 * @param line from 1
 * @param column from 1, in characters
 * @param found the word that stands there; empty at the end of the text
 * @param expected what could have stood there instead
 */
public record ReadingProblem(int line, int column, String found, String expected) {
    public ReadingProblem {
        Objects.requireNonNull(found);
        Objects.requireNonNull(expected);
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("no text has a line " + line + ", column " + column);
        }
    }
}
