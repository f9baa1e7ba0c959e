package edgewright.booklet;

import edgewright.check.Verdict;

/** How publishing a pattern ended. Where it was not published nothing was written. */
public sealed interface Outcome {
    /**
     * The pattern lies where it was asked for.
     *
     * @param pages how many it has
     * @param draft whether it says on every page that it is a draft
     */
    record Published(int pages, boolean draft, Verdict verdict) implements Outcome {}

    /** The chart has error findings and no draft was asked for. */
    record Refused(Verdict verdict) implements Outcome {}

    /** The caller's {@link Progress} asked to stop. */
    record Cancelled() implements Outcome {}
}
