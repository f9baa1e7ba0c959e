package edgewright.words.grammar;

/**
 * How far something is worked.
 *
 * @param last how many stitches are left, where that is said; else 0
 */
public record Extent(Lexeme at, Kind kind, int last) {
    public enum Kind {
        /** To the corner. */
        CORNER,
        /** To the last stitches. */
        LAST,
        /** Round the piece. */
        AROUND
    }
}
