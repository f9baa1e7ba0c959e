package edgewright.words.tree;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** What is worked along a side up to its next corner: steps alone, or steps round a group. */
public sealed interface SideInstructions {
    /** Steps that are worked as they stand; there may be none, where the corner comes at once. */
    record Steps(List<SideStep> before) implements SideInstructions {
        public Steps {
            before = List.copyOf(before);
        }

        @Override
        public Optional<Group> group() {
            return Optional.empty();
        }

        @Override
        public List<SideStep> after() {
            return List.of();
        }
    }

    /** A group, with steps before and after it or none. */
    record RoundGroup(List<SideStep> before, Group repeated, List<SideStep> after) implements SideInstructions {
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

    /** Steps that are worked as they stand. */
    static SideInstructions of(List<? extends SideStep> steps) {
        return new Steps(List.copyOf(steps));
    }

    /** Steps round a group. */
    static SideInstructions of(List<? extends SideStep> before, Group group, List<? extends SideStep> after) {
        return new RoundGroup(List.copyOf(before), group, List.copyOf(after));
    }

    /** The steps before the group; all of them if there is no group. */
    List<SideStep> before();

    /** The group, if there is one. */
    Optional<Group> group();

    /** The steps from the group to the corner. */
    List<SideStep> after();

    /** The steps of one part: all that is in the group, worked once, and none if there is no group. */
    default List<SideStep> steps(StartMark.Part part) {
        return switch (part) {
            case BEFORE -> before();
            case GROUP -> group().map(Group::steps).orElse(List.of());
            case AFTER -> after();
        };
    }

    /**
     * Where these words tell of a stitch, as a maker works them: what stands before the group, the group as often as it fits before
     * the last stitches, and what stands after it.
     *
     * @param stitch of the side, counted from 1 from the corner just turned
     * @param stitches of the whole side; as many as these words can be worked on
     */
    default StretchPlace placeOf(int stitch, int stitches) {
        int first = SideStep.stitches(before());
        int last = SideStep.stitches(after());
        if (group().isEmpty() || stitch <= first) {
            return new StretchPlace(StartMark.Part.BEFORE, stitch);
        }
        return stitch > stitches - last
                ? new StretchPlace(StartMark.Part.AFTER, stitch - (stitches - last))
                : new StretchPlace(
                        StartMark.Part.GROUP,
                        (stitch - first - 1) % group().orElseThrow().stitches() + 1);
    }

    /** Whether nothing is worked. */
    default boolean isEmpty() {
        return before().isEmpty() && group().isEmpty();
    }

    /** All runs as they stand in the words: those of the group and those in brackets once. */
    default Stream<Run> runs() {
        return Stream.of(StartMark.Part.values())
                .flatMap(part -> steps(part).stream())
                .flatMap(SideStep::runs);
    }
}
