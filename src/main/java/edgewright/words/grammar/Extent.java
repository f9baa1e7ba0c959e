package edgewright.words.grammar;

/**
 * How far something is worked.
 *
 * @param last how many stitches are left, where that is said; {@link #UNTOLD} where as many as follow, else 0
 */
public record Extent(Lexeme at, Kind kind, int last) {
    /** As many stitches are left as are told behind it. */
    public static final int UNTOLD = -1;

    public enum Kind {
        /** To the corner. */
        CORNER,
        /** To the last stitches. */
        LAST,
        /** Round the piece. */
        AROUND
    }
}
