package edgewright.words.tree;

import edgewright.chart.PerSide;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What a pattern states about the stitches on a side in one round, corner chains not counted. */
public sealed interface SideSize {
    /** Nothing is said. */
    record Unstated() implements SideSize {}

    /**
     * A side may have any number of this multiple. Where it names examples, the counts of the rounds are of these, in their
     * order.
     */
    record OfMultiple(Multiple numbers) implements SideSize {
        public OfMultiple {
            Objects.requireNonNull(numbers);
        }

        @Override
        public Optional<Multiple> multiple() {
            return Optional.of(numbers);
        }
    }

    /**
     * The numbers that the sides do have.
     *
     * @param counts one for each size of the pattern, in its order; at least one
     * @param multiple the numbers that a side may have, where that is said too
     */
    record Counted(List<PerSide<Integer>> counts, Optional<Multiple> multiple) implements SideSize {
        public Counted {
            counts = List.copyOf(counts);
            Objects.requireNonNull(multiple);
            if (counts.isEmpty()) {
                throw new IllegalArgumentException("counts of no size");
            }
            if (counts.stream().flatMap(PerSide::stream).anyMatch(stitches -> stitches < 0)) {
                throw new IllegalArgumentException("a side cannot have fewer than no stitches");
            }
        }
    }

    /** Nothing is said. */
    static SideSize unstated() {
        return new Unstated();
    }

    /** The counts of one size. */
    static SideSize of(PerSide<Integer> counts) {
        return new Counted(List.of(counts), Optional.empty());
    }

    /** The counts of several sizes, at least one. */
    static SideSize of(List<PerSide<Integer>> counts) {
        return new Counted(counts, Optional.empty());
    }

    /** Any number of this multiple. */
    static SideSize of(Multiple numbers) {
        return new OfMultiple(numbers);
    }

    /** The numbers that a side may have, where they are said. */
    default Optional<Multiple> multiple() {
        return Optional.empty();
    }

    /** The numbers that the sides do have, one for each size; none where they are not said. */
    default List<PerSide<Integer>> counts() {
        return List.of();
    }
}
