package edgewright.proof;

import edgewright.hands.Fabric;
import edgewright.hands.Stop;
import edgewright.words.read.ReadingProblem;
import edgewright.words.tree.Instructions;
import java.util.List;
import java.util.Optional;

/** What became of words that were worked back. */
public sealed interface ProofResult {
    /** Whether the words make the chart, and nothing else. */
    default boolean agrees() {
        return false;
    }

    /** What came off the hook, as far as hands got; empty if the words were not understood. */
    default Optional<Fabric> fabric() {
        return Optional.empty();
    }

    /**
     * The words could be worked to the end, and what came off the hook is what the chart says, if there was one.
     *
     * @param worked what came off the hook
     */
    record Agrees(Instructions pattern, Fabric worked) implements ProofResult {
        @Override
        public boolean agrees() {
            return true;
        }

        @Override
        public Optional<Fabric> fabric() {
            return Optional.of(worked);
        }
    }

    /**
     * The words could be worked to the end, but something else than the chart came off the hook.
     *
     * @param worked what came off the hook
     */
    record Differs(Fabric worked, List<Difference> differences) implements ProofResult {
        public Differs {
            differences = List.copyOf(differences);
        }

        @Override
        public Optional<Fabric> fabric() {
            return Optional.of(worked);
        }
    }

    /**
     * Hands could not go on.
     *
     * @param worked what came off the hook up to there
     */
    record Stopped(Fabric worked, Stop stop) implements ProofResult {
        @Override
        public Optional<Fabric> fabric() {
            return Optional.of(worked);
        }
    }

    /** The words were not understood. */
    record Unread(List<ReadingProblem> problems) implements ProofResult {
        public Unread {
            problems = List.copyOf(problems);
        }
    }

    /**
     * The words were not worked, since the piece has more than {@link Prover#MOST_STITCHES}.
     *
     * @param stitches in all rounds, the base round and corner chains not counted
     */
    record TooLarge(long stitches) implements ProofResult {}
}
