package edgewright.check;

import java.util.List;
import java.util.stream.Stream;

/**
 * One law of the craft, as far as a chart can break it. Its page in the rule book says why; see {@link RulePage}.
 *
 * <p>A rule answers with breaches and never touches the chart. It has no state.
 */
interface Rule<V extends Violation> {
    /** Its name in files, on screens and in the bundles: small letters and hyphens. */
    String id();

    /** How much it weighs to break it. */
    Severity severity();

    /**
     * The edits that may help against one of its breaches, best first; which of them do is tried by {@link RemedyTrial}.
     *
     * @return for each remedy its variants, the best first, of which at most one is offered
     */
    List<Stream<RemedyEdit>> remedies(Verdict verdict, V violation);
}
