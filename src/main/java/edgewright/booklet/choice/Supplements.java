package edgewright.booklet.choice;

/**
 * The parts of a printed pattern that guide a maker through the work. The pattern is whole without them.
 *
 * @param guide the round guide: for each round what to work, count and see, with boxes to tick
 * @param worksheet the worksheet: where counts are written down and put right with a pencil, with tables of sizes
 * @param yarn how much yarn it takes, altogether and round by round
 */
public record Supplements(boolean guide, boolean worksheet, boolean yarn) {
    /** Everything; the default. */
    public static final Supplements ALL = new Supplements(true, true, true);

    /** The bare pattern. */
    public static final Supplements NONE = new Supplements(false, false);

    /** Without the amounts of yarn. */
    public Supplements(boolean guide, boolean worksheet) {
        this(guide, worksheet, false);
    }
}
