package edgewright.fit;

import edgewright.chart.BorderShape;
import edgewright.chart.PerSide;
import java.util.Objects;
import java.util.Optional;

/** For which pieces a pattern is: any, every piece of one size, or one piece whose counts are put right on the way. */
public sealed interface PatternSize {
    /** Any piece on which the design comes out even. */
    static PatternSize any() {
        return new Any();
    }

    /** Of this size, or of any if there is none. */
    static PatternSize of(Optional<PerSide<Integer>> repeats) {
        return repeats.<PatternSize>map(OfRepeats::new).orElseGet(Any::new);
    }

    /** How often the repeat is worked on each side, at last; empty for any size. */
    Optional<PerSide<Integer>> repeats();

    /** How one piece is put right; empty where the pattern is not for one piece, or where nothing has to be put right. */
    default Optional<FitPlan> changes() {
        return Optional.empty();
    }

    /**
     * The stitches that the sides have in this round, corner chains not counted; empty for any size.
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
