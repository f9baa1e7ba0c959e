package edgewright.booklet;

import edgewright.check.Verdict;
import java.util.List;

/** How publishing a pattern ended. Where it was not published nothing was written. */
public sealed interface PublishOutcome {
    /**
     * The pattern lies where it was asked for.
     *
     * @param pages how many it has
     * @param draft whether it says on every page that it is a draft
     */
    record Published(int pages, boolean draft, Verdict verdict) implements PublishOutcome {}

    /**
     * The chart has more stitches than are printed.
     *
     * @param stitches how many it would show, at least
     */
    record TooLarge(long stitches) implements PublishOutcome {}

    /** The chart has error findings and no draft was asked for. */
    record Refused(Verdict verdict) implements PublishOutcome {}

    /**
     * The words do not make the chart, and no draft was asked for.
     *
     * @param problems what stands against them, a sentence each
     */
    record NotProved(List<String> problems) implements PublishOutcome {
        public NotProved {
            problems = List.copyOf(problems);
        }
    }

    /** The caller's {@code Progress} asked to stop. */
    record Cancelled() implements PublishOutcome {}
}
