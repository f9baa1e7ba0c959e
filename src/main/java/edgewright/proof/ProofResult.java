package edgewright.proof;

import edgewright.hands.Fabric;
import edgewright.hands.Stop;
import edgewright.words.ReadingProblem;
import java.util.List;

/** What became of words that were worked back. */
public sealed interface ProofResult {
    /** Whether the words make the chart, and nothing else. */
    default boolean agrees() {
        return false;
    }

    /** The words could be worked to the end, and what came off the hook is what the chart says. */
    record Agrees(Fabric fabric) implements ProofResult {
        @Override
        public boolean agrees() {
            return true;
        }
    }

    /** The words could be worked to the end, but something else than the chart came off the hook. */
    record Differs(Fabric fabric, List<Difference> differences) implements ProofResult {
        public Differs {
            differences = List.copyOf(differences);
        }
    }

    /** Hands could not go on. */
    record Stopped(Fabric fabric, Stop stop) implements ProofResult {}

    /** The words were not understood. */
    record Unread(List<ReadingProblem> problems) implements ProofResult {
        public Unread {
            problems = List.copyOf(problems);
        }
    }
}
