package edgewright.booklet;

import edgewright.check.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How publishing a pattern ended. Where it was not published nothing was written. */
public sealed interface PublishOutcome {
    /**
     * The pattern lies where it was asked for.
     *
     * @param pages how many it has
     * @param draft whether it says on every page that it is a draft
     * @param unprinted the characters that the faces lack, each once; a question mark stands for each of them
     */
    record Published(int pages, boolean draft, Verdict verdict, String unprinted) implements PublishOutcome {
        private static final int MOST_NAMED = 12;

        /** The characters that could not be printed, each with its number in Unicode; of very many the first. */
        public String unprintedNamed() {
            String named = unprinted
                    .codePoints()
                    .limit(MOST_NAMED)
                    .mapToObj(c -> String.format(Locale.ROOT, "%s (U+%04X)", Character.toString(c), c))
                    .collect(Collectors.joining(", "));
            return unprinted.codePoints().count() > MOST_NAMED ? named + " \u2026" : named;
        }
    }

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
