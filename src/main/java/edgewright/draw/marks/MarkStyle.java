package edgewright.draw.marks;

/** How a chart marks a long stitch, which is worked into one round and covers a stitch of another. */
public enum MarkStyle {
    /** A stem from the square of the stitch down to the square where it lands. */
    STEMS,
    /**
     * One sign in the square of the stitch; the back-loop stitch that it covers has no mark, so that the hook is seen to pass over
     * that square.
     */
    SQUARES;

    /** What is drawn and printed where nobody chooses. */
    public static final MarkStyle USUAL = STEMS;
}
