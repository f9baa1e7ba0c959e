package edgewright.words.said;

import java.util.Objects;

/**
 * A piece of a text and what it says.
 *
 * @param begin its first character, counted from 0
 * @param end after its last character
 */
public record SaidSpan(int begin, int end, Said said) {
    public SaidSpan {
        Objects.requireNonNull(said);
        if (begin < 0 || end <= begin) {
            throw new IllegalArgumentException("a piece of a text from " + begin + " to " + end);
        }
    }

    /** Whether a character is in it, counted from 0. */
    public boolean holds(int character) {
        return begin <= character && character < end;
    }

    /** Whether the other lies within it, or is the same piece. */
    public boolean holds(SaidSpan other) {
        return begin <= other.begin && other.end <= end;
    }
}
