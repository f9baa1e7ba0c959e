package edgewright.words.tree;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What is worked along a side up to its next corner: runs alone, or runs round a group. */
public sealed interface SideInstructions {
    /** Runs that are worked as they stand; there may be none, where the corner comes at once. */
    record Runs(List<Run> before) implements SideInstructions {
        public Runs {
            before = List.copyOf(before);
        }

        @Override
        public Optional<Group> group() {
            return Optional.empty();
        }

        @Override
        public List<Run> after() {
            return List.of();
        }
    }

    /** A group, with runs before and after it or none. */
    record RoundGroup(List<Run> before, Group repeated, List<Run> after) implements SideInstructions {
        public RoundGroup {
            Objects.requireNonNull(repeated);
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        @Override
        public Optional<Group> group() {
            return Optional.of(repeated);
        }
    }

    /** Runs that are worked as they stand. */
    static SideInstructions of(List<Run> runs) {
        return new Runs(runs);
    }

    /** Runs round a group. */
    static SideInstructions of(List<Run> before, Group group, List<Run> after) {
        return new RoundGroup(before, group, after);
    }

    /** The runs before the group; all of them if there is no group. */
    List<Run> before();

    /** The group, if there is one. */
    Optional<Group> group();

    /** The runs from the group to the corner. */
    List<Run> after();

    /** Whether nothing is worked. */
    default boolean isEmpty() {
        return before().isEmpty() && group().isEmpty();
    }
}
