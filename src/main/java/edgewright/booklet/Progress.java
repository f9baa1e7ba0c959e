package edgewright.booklet;

/**
 * Told how far a pattern is, and asked whether to go on. Called on the thread that publishes, between pages; an answer
 * should come at once.
 */
@FunctionalInterface
public interface Progress {
    /** Goes on to the end and tells nobody. */
    Progress NONE = (done, pages) -> true;

    /**
     * @param done how many pages are set, from 0
     * @param pages how many there will be
     * @return whether to go on; {@code false} leaves nothing behind
     */
    boolean goOn(int done, int pages);
}
