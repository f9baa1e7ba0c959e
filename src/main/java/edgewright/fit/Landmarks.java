package edgewright.fit;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.Stitches;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds what a maker should see in a round. Everything said is true of whole sides, both corners included; where nothing
 * simple is true, nothing is said.
 *
 * <p>A chart with ragged sections is refused with an {@link IllegalArgumentException}.
 */
public final class Landmarks {
    /**
     * Sides with these repeats show every neighbourhood that a side of any size has: three columns wide at most, or as wide
     * as two repeats where neighbours are looked for further away. What depends on the size differs among them.
     */
    private static final List<Integer> ANY_SIZE = List.of(0, 1, 2, 3);

    /** A side with so many repeats. */
    private record SizedSide(Side side, int repeats) {}

    private final Chart chart;
    private final int round;
    private final List<BitSet> longs;
    private final List<BitSet> longsBelow;
    private final List<BitSet> longsTwoBelow;

    private Landmarks(Chart chart, int round, List<SizedSide> sizes) {
        if (!chart.raggedSections().isEmpty()) {
            throw new IllegalArgumentException("the chart has sections of the wrong length");
        }
        this.chart = chart;
        this.round = round;
        this.longs = columns(sizes, round);
        this.longsBelow = columns(sizes, round - 1);
        this.longsTwoBelow = columns(sizes, round - 2);
    }

    /** What is true of this round on sides of every size, also of those with no repeat. */
    public static List<Landmark> of(Chart chart, int round) {
        return new Landmarks(
                        chart,
                        round,
                        Stream.of(Side.values())
                                .map(chart::alike)
                                .distinct()
                                .flatMap(side -> ANY_SIZE.stream().map(m -> new SizedSide(side, m)))
                                .toList())
                .all();
    }

    /** What is true of this round on the four sides of a piece with so many repeats. */
    public static List<Landmark> of(Chart chart, int round, PerSide<Integer> repeats) {
        return new Landmarks(
                        chart,
                        round,
                        Stream.of(Side.values())
                                .map(side -> new SizedSide(chart.alike(side), repeats.get(side)))
                                .distinct()
                                .toList())
                .all();
    }

    private List<Landmark> all() {
        List<Landmark> all = new ArrayList<>();
        if (longs.stream().allMatch(BitSet::isEmpty)) {
            return all;
        }
        told(relations()).forEach(relation -> all.add(new Landmark.EachLong(relation)));
        same(Landmarks::groupSize).filter(size -> size > 1).ifPresent(size -> all.add(new Landmark.InGroups(size)));
        same(side -> Optional.of(side.nextSetBit(0))).ifPresent(first -> all.add(new Landmark.FirstLong(first + 1)));
        Round worked = chart.round(round);
        all.add(new Landmark.LongsOnSide(
                worked.fromCorner().countCovering() + worked.toCorner().countCovering(),
                worked.repeat().countCovering()));
        return List.copyOf(all);
    }

    /** The relations in which every long stitch of every side stands. */
    private Set<LandmarkRelation> relations() {
        Set<LandmarkRelation> relations = EnumSet.allOf(LandmarkRelation.class);
        for (int size = 0; size < longs.size(); size++) {
            BitSet below = longsBelow.get(size);
            BitSet twoBelow = longsTwoBelow.get(size);
            longs.get(size).stream().forEach(i -> relations.removeIf(relation -> !holds(relation, i, below, twoBelow)));
        }
        return relations;
    }

    /** Bit i of a round stands on bit i - 1 of the round below and over bit i - 2 of the one two below. */
    private static boolean holds(LandmarkRelation relation, int i, BitSet below, BitSet twoBelow) {
        boolean isAfter = i >= 2 && below.get(i - 2);
        boolean isBefore = below.get(i);
        return switch (relation) {
            case BETWEEN_LONGS_BELOW -> isAfter && isBefore;
            case AFTER_LONG_BELOW -> isAfter;
            case BEFORE_LONG_BELOW -> isBefore;
            case BESIDE_LONG_BELOW -> isAfter || isBefore;
            case MIDWAY_BETWEEN_LONGS_BELOW -> isMidway(i - 1, below);
            case OVER_LONG_TWO_BELOW -> i >= 2 && twoBelow.get(i - 2);
        };
    }

    private static boolean isMidway(int column, BitSet below) {
        if (column < 0 || below.get(column)) {
            return false;
        }
        int before = below.previousSetBit(column);
        int after = below.nextSetBit(column);
        return before >= 0 && after >= 0 && column - before == after - column && after - column > 1;
    }

    /** Without those that follow from another one. */
    private static Set<LandmarkRelation> told(Set<LandmarkRelation> relations) {
        if (relations.contains(LandmarkRelation.BETWEEN_LONGS_BELOW)) {
            relations.remove(LandmarkRelation.AFTER_LONG_BELOW);
            relations.remove(LandmarkRelation.BEFORE_LONG_BELOW);
        }
        if (relations.contains(LandmarkRelation.BETWEEN_LONGS_BELOW)
                || relations.contains(LandmarkRelation.AFTER_LONG_BELOW)
                || relations.contains(LandmarkRelation.BEFORE_LONG_BELOW)) {
            relations.remove(LandmarkRelation.BESIDE_LONG_BELOW);
        }
        return relations;
    }

    /** What is said of the sides that have long stitches, if it is the same of all of them. */
    private <T> Optional<T> same(Function<BitSet, Optional<T>> said) {
        List<Optional<T>> all = longs.stream()
                .filter(side -> !side.isEmpty())
                .map(said)
                .distinct()
                .toList();
        return all.size() == 1 ? all.get(0) : Optional.empty();
    }

    /** The size of the groups of long stitches, if all are of one size. */
    private static Optional<Integer> groupSize(BitSet side) {
        Optional<Integer> size = Optional.empty();
        for (int first = side.nextSetBit(0); first >= 0; ) {
            int end = side.nextClearBit(first);
            if (size.isPresent() && size.get() != end - first) {
                return Optional.empty();
            }
            size = Optional.of(end - first);
            first = side.nextSetBit(end);
        }
        return size;
    }

    /** For each size the long stitches of a whole side; bit 0 is the stitch in the corner chain. Empty below round 1. */
    private List<BitSet> columns(List<SizedSide> sizes, int r) {
        return sizes.stream()
                .map(size -> r < 1 ? new BitSet() : longs(chart.round(r).side(size.side(), size.repeats())))
                .toList();
    }

    private static BitSet longs(Stitches side) {
        BitSet longs = new BitSet(side.length());
        IntStream.range(0, side.words()).forEach(n -> {
            for (long left = side.coveringWord(n); left != 0; left &= left - 1) {
                longs.set(Long.SIZE * n + Long.numberOfTrailingZeros(left));
            }
        });
        return longs;
    }
}
