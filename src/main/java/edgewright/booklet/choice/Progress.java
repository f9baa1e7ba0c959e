package edgewright.booklet.choice;

import java.util.concurrent.CancellationException;

/**
 * Told how far a pattern is, and asked whether to go on. Called on the thread that publishes: before each part is set, before
 * each round of words that is read and each side that is worked back, between pages. An answer should come at once.
 */
@FunctionalInterface
public interface Progress {
    /** Goes on to the end and tells nobody. */
    Progress NONE = (done, pages) -> true;

    /**
     * @param done how many pages are set, from 0
     * @param pages how many there will be; 0 while that is not known, before the first page
     * @return whether to go on; {@code false} leaves nothing behind
     */
    boolean goOn(int done, int pages);

    /** Asks before the first page. */
    default boolean isStopped() {
        return !goOn(0, 0);
    }

    /**
     * Asks before the first page.
     *
     * @throws CancellationException if it is not to go on
     */
    default void requireGoOn() {
        if (isStopped()) {
            throw new CancellationException();
        }
    }
}
