package edgewright.words.tree;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The instructions for one round: one side from the corner just turned to the next one, and that corner. All four sides are
 * worked alike; a round may begin along one of them.
 *
 * <p>A round of one stitch throughout is a group of one such stitch that goes on to the corner.
 *
 * @param number the round, counted outwards from 1
 * @param yarn the id of its yarn
 * @param side what is said of the stitches on a side; what is said need not be true, and a maker finds out
 * @param before the runs from the corner to the group; all of them if there is no group
 * @param after the runs from the group to the next corner; none if there is no group
 * @param cornerChains the chains of each corner, 1 to 3
 * @param start where it begins; empty if with the first stitch after any corner
 * @param changes what is worked on each side where stitches are added or lost. Then there is no group, nothing stands before
 *     or after it, and the round begins at a corner
 */
public record WrittenRound(
        int number,
        String yarn,
        SideSize side,
        List<Run> before,
        Optional<Group> group,
        List<Run> after,
        int cornerChains,
        Optional<WrittenStart> start,
        Optional<ChangedSides> changes) {
    public WrittenRound {
        Objects.requireNonNull(yarn);
        Objects.requireNonNull(side);
        Objects.requireNonNull(group);
        Objects.requireNonNull(start);
        Objects.requireNonNull(changes);
        before = List.copyOf(before);
        after = List.copyOf(after);
        if (number < 1) {
            throw new IllegalArgumentException("round " + number);
        }
        boolean isEmpty = before.isEmpty() && group.isEmpty() && after.isEmpty();
        if (changes.isPresent() && (!isEmpty || start.isPresent())) {
            throw new IllegalArgumentException("a round with changes has other words and begins at a corner");
        }
        if (changes.isEmpty() && group.isEmpty() && (before.isEmpty() || !after.isEmpty())) {
            throw new IllegalArgumentException("without a group every run stands before it, and there is one at least");
        }
        BaseRound.requireCorner(cornerChains);
    }

    /** A round without changes. */
    public WrittenRound(
            int number,
            String yarn,
            SideSize side,
            List<Run> before,
            Optional<Group> group,
            List<Run> after,
            int cornerChains,
            Optional<WrittenStart> start) {
        this(number, yarn, side, before, group, after, cornerChains, start, Optional.empty());
    }

    /** A round with changes. */
    public WrittenRound(int number, String yarn, SideSize side, int cornerChains, ChangedSides changes) {
        this(
                number,
                yarn,
                side,
                List.of(),
                Optional.empty(),
                List.of(),
                cornerChains,
                Optional.empty(),
                Optional.of(changes));
    }

    /** A round that begins at a corner. */
    public WrittenRound(
            int number,
            String yarn,
            SideSize side,
            List<Run> before,
            Optional<Group> group,
            List<Run> after,
            int cornerChains) {
        this(number, yarn, side, before, group, after, cornerChains, Optional.empty());
    }

    /** What is worked along a whole side. */
    public SideInstructions stretch() {
        return new SideInstructions(before, group, after);
    }
}
