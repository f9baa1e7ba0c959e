package edgewright.booklet;

/**
 * The parts of a printed pattern that guide a maker through the work. The pattern is whole without them.
 *
 * @param guide the round guide: for each round what to work, count and see, with boxes to tick
 * @param worksheet the worksheet: where counts are written down and put right with a pencil, with tables of sizes
 */
public record Supplements(boolean guide, boolean worksheet) {
    /** Everything; the default. */
    public static final Supplements ALL = new Supplements(true, true);

    /** The bare pattern. */
    public static final Supplements NONE = new Supplements(false, false);
}
