package edgewright.words.tree;

import edgewright.chart.Corner;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The instructions for one round. Most rounds are worked alike on all four sides, and begin at a corner or along a side; one in
 * which the counts are put right has words for each side; one that is worked just as a round before it need not say so again.
 */
public sealed interface WrittenRound {
    /** A round that is told in full, alike on all sides. Others can be worked as it. */
    sealed interface InFull extends WrittenRound {}

    /**
     * A round that is worked alike on all sides and begins with the first stitch after any corner.
     *
     * @param stretch from the corner just turned to the next one; not empty. A round of one stitch throughout is a group of
     *     one such stitch that goes on to the corner
     */
    record AtCorner(int number, String yarn, SideSize side, SideInstructions stretch, int cornerChains)
            implements InFull {
        public AtCorner {
            requireRound(number, yarn, side, cornerChains);
            requireWork(stretch);
        }
    }

    /**
     * A round that is worked alike on all sides and begins along one of them.
     *
     * @param stretch a whole side, from the corner just turned to the next one; not empty
     * @param begun where it begins; its mark stands in the stretch
     */
    record AlongSide(
            int number, String yarn, SideSize side, SideInstructions stretch, int cornerChains, WrittenStart begun)
            implements InFull {
        public AlongSide {
            requireRound(number, yarn, side, cornerChains);
            requireWork(stretch);
            List<? extends SideStep> marked = stretch.steps(begun.mark().part());
            if (begun.mark().step() > marked.size()) {
                throw new IllegalArgumentException(
                        "a mark after " + begun.mark().step() + " of " + marked);
            }
        }

        @Override
        public Optional<WrittenStart> start() {
            return Optional.of(begun);
        }
    }

    /**
     * A round in which stitches are added or lost. It begins at a corner.
     *
     * @param work what is worked on each side, from the corner just turned to the next one; something on each
     */
    record PuttingRight(int number, String yarn, SideSize side, PerSide<List<ChangingStep>> work, int cornerChains)
            implements WrittenRound {
        public PuttingRight {
            requireRound(number, yarn, side, cornerChains);
            work = work.map(List::copyOf);
            if (work.stream().anyMatch(List::isEmpty)) {
                throw new IllegalArgumentException("words for four sides are expected, not " + work);
            }
        }

        @Override
        public SideInstructions stretch() {
            return SideInstructions.of(List.of());
        }

        @Override
        public Optional<PerSide<List<ChangingStep>>> changes() {
            return Optional.of(work);
        }
    }

    /**
     * A round that is worked as one before it, but for its number, its yarn and its count. Rounds that stand under one title
     * ('Rounds 1 to 4') are the first of them, told, and the others as the first.
     *
     * @param as the round that is told; of a lower number
     * @param start where this round begins, at the same place of the words as that round; empty if both begin at a corner
     */
    record AsRound(int number, String yarn, SideSize side, InFull as, Optional<WrittenStart> start)
            implements WrittenRound {
        public AsRound {
            requireRound(number, yarn, side, as.cornerChains());
            if (as.number() >= number) {
                throw new IllegalArgumentException("round " + number + " as round " + as.number());
            }
            if (!start.map(WrittenStart::mark).equals(as.start().map(WrittenStart::mark))) {
                throw new IllegalArgumentException(start + " as " + as.start());
            }
        }

        /** A round that begins at a corner as the one before it does. */
        public AsRound(int number, String yarn, SideSize side, AtCorner as) {
            this(number, yarn, side, as, Optional.empty());
        }

        /** This round, told itself. */
        public InFull inFull() {
            return start.<InFull>map(begun -> new AlongSide(number, yarn, side, stretch(), cornerChains(), begun))
                    .orElseGet(() -> new AtCorner(number, yarn, side, stretch(), cornerChains()));
        }

        @Override
        public int cornerChains() {
            return as.cornerChains();
        }

        @Override
        public SideInstructions stretch() {
            return as.stretch();
        }
    }

    /**
     * A round whose sides are told apart. It begins at a corner.
     *
     * @param sides what is worked on each side, from the corner just turned to the next one; something on each
     */
    record EachSide(int number, String yarn, SideSize side, PerSide<SideInstructions> sides, int cornerChains)
            implements WrittenRound {
        public EachSide {
            requireRound(number, yarn, side, cornerChains);
            sides.stream().forEach(WrittenRound::requireWork);
        }

        @Override
        public SideInstructions stretch() {
            return SideInstructions.of(List.of());
        }

        @Override
        public SideInstructions stretch(Side along) {
            return sides.get(along);
        }
    }

    /** The round, counted outwards from 1. */
    int number();

    /** The id of its yarn. */
    String yarn();

    /** What is said of the stitches on a side; what is said need not be true, and a maker finds out. */
    SideSize side();

    /** The chains of each corner, 1 to 3. */
    int cornerChains();

    /** What is worked along every side alike; empty only where each side has words of its own. */
    SideInstructions stretch();

    /** What is worked along this side; empty only in a round in which stitches are added or lost. */
    default SideInstructions stretch(Side along) {
        return stretch();
    }

    /** Where it begins; empty if at a corner. */
    default Optional<WrittenStart> start() {
        return Optional.empty();
    }

    /** The words of each side, in a round in which stitches are added or lost. */
    default Optional<PerSide<List<ChangingStep>>> changes() {
        return Optional.empty();
    }

    private static void requireRound(int number, String yarn, SideSize side, int cornerChains) {
        Objects.requireNonNull(yarn);
        Objects.requireNonNull(side);
        if (number < 1) {
            throw new IllegalArgumentException("round " + number);
        }
        Corner.requireChains(cornerChains);
    }

    private static void requireWork(SideInstructions stretch) {
        if (stretch.isEmpty()) {
            throw new IllegalArgumentException("a round in which nothing is worked");
        }
    }
}
