package edgewright.fit;

import edgewright.chart.BorderShape;
import edgewright.chart.Chart;
import edgewright.chart.NamedSize;
import edgewright.chart.PerSide;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * For which pieces a pattern is: any, every piece of one size or of the sizes that the designer names, or one piece whose counts
 * are put right on the way.
 */
public sealed interface PatternSize {
    /** Any piece on which the design comes out even. */
    static PatternSize any() {
        return new Any();
    }

    /** Of this size, or of any if there is none. */
    static PatternSize of(Optional<PerSide<Integer>> repeats) {
        return repeats.<PatternSize>map(OfRepeats::new).orElseGet(Any::new);
    }

    /** Of this size, or if there is none of those that the designer of this chart names; any if there are none either. */
    static PatternSize of(Optional<PerSide<Integer>> repeats, Chart chart) {
        return repeats.<PatternSize>map(OfRepeats::new).orElseGet(() -> named(chart));
    }

    /** The sizes that the designer of this chart names; any if there are none. */
    static PatternSize named(Chart chart) {
        List<NamedSize> sizes = chart.making().sizes();
        return sizes.isEmpty()
                ? any()
                : new OfSizes(sizes.stream()
                        .map(size -> new OfSizes.Size(size.name(), size.repeats(chart.border())))
                        .toList());
    }

    /** How often the repeat is worked on each side, at last; empty for any size, and for more than one. */
    Optional<PerSide<Integer>> repeats();

    /** The same for each size of the pattern, in its order; none for any size. */
    default List<PerSide<Integer>> sizes() {
        return repeats().stream().toList();
    }

    /** What the sizes are called; none where they have no names. */
    default List<String> names() {
        return List.of();
    }

    /** How one piece is put right; empty where the pattern is not for one piece, or where nothing has to be put right. */
    default Optional<FitPlan> changes() {
        return Optional.empty();
    }

    /**
     * The stitches that the sides have in this round, corner chains not counted; empty for any size, and for more than one.
     *
     * @param border of the chart
     */
    default Optional<PerSide<Integer>> stitches(BorderShape border, int round) {
        return changes()
                .map(plan -> plan.stitches(round))
                .or(() -> repeats().map(perSide -> border.stitches(round, perSide)));
    }

    /** Any size. */
    record Any() implements PatternSize {
        @Override
        public Optional<PerSide<Integer>> repeats() {
            return Optional.empty();
        }
    }

    /**
     * Every piece that is of this size from the base round on.
     *
     * @param perSide how often the repeat is worked on each side
     */
    record OfRepeats(PerSide<Integer> perSide) implements PatternSize {
        public OfRepeats {
            Objects.requireNonNull(perSide);
        }

        @Override
        public Optional<PerSide<Integer>> repeats() {
            return Optional.of(perSide);
        }
    }

    /**
     * Pieces of the sizes that the designer names.
     *
     * @param named in their order, at least one
     */
    record OfSizes(List<Size> named) implements PatternSize {
        /**
         * A size.
         *
         * @param repeats how often the repeat is worked on each side
         */
        public record Size(String name, PerSide<Integer> repeats) {
            public Size {
                Objects.requireNonNull(name);
                Objects.requireNonNull(repeats);
            }
        }

        public OfSizes {
            named = List.copyOf(named);
            if (named.isEmpty()) {
                throw new IllegalArgumentException("a pattern for named sizes, of which there are none");
            }
        }

        @Override
        public Optional<PerSide<Integer>> repeats() {
            return named.size() == 1 ? Optional.of(named.get(0).repeats()) : Optional.empty();
        }

        @Override
        public List<PerSide<Integer>> sizes() {
            return named.stream().map(Size::repeats).toList();
        }

        @Override
        public List<String> names() {
            return named.stream().map(Size::name).toList();
        }
    }

    /**
     * One piece, that was counted.
     *
     * @param plan for the chart of the pattern
     */
    record OfPiece(FitPlan plan) implements PatternSize {
        public OfPiece {
            Objects.requireNonNull(plan);
        }

        @Override
        public Optional<PerSide<Integer>> repeats() {
            return Optional.of(plan.targets().repeats());
        }

        @Override
        public Optional<FitPlan> changes() {
            return Optional.of(plan).filter(any -> !any.isDone());
        }
    }
}
