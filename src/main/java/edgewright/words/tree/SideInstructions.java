package edgewright.words.tree;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is worked along a side up to its next corner.
 *
 * @param before the runs before the group; all of them if there is no group
 * @param after the runs from the group to the corner; none if there is no group
 */
public record SideInstructions(List<Run> before, Optional<Group> group, List<Run> after) {
    public SideInstructions {
        Objects.requireNonNull(group);
        before = List.copyOf(before);
        after = List.copyOf(after);
        if (group.isEmpty() && !after.isEmpty()) {
            throw new IllegalArgumentException("without a group every run stands before it");
        }
    }

    /** Whether nothing is worked. */
    public boolean isEmpty() {
        return before.isEmpty() && group.isEmpty();
    }
}
