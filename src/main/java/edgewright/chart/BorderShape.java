package edgewright.chart;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How the sides of a border are put together: a {@link SideShape} for each, and what follows for all of them together. Whoever
 * means the sides of a piece asks here, by side or for all at once; today all sides of a chart have the same shape.
 *
 * <p>All counts are of stitches, corner chains not counted.
 */
public record BorderShape(PerSide<SideShape> sides) {
    public BorderShape {
        Objects.requireNonNull(sides);
    }

    /** A border with all sides alike. */
    public static BorderShape of(SideShape shape) {
        return new BorderShape(PerSide.all(shape));
    }

    /** A, w and B of every side as they follow from round 1. */
    public static BorderShape of(Round first) {
        return of(sideOf(first));
    }

    /** A, w and B of the first side alone, as they follow from round 1. */
    static SideShape sideOf(Round first) {
        return new SideShape(
                first.fromCorner().length() - 1,
                first.repeat().length(),
                first.toCorner().length() - 1);
    }

    /** How this side is put together. */
    public SideShape on(Side side) {
        return sides.get(side);
    }

    /** How many stitches this section has in that round. */
    public int length(Section section, int round) {
        return having(section).length(section, round);
    }

    /**
     * What the stitch at this place stands on; see {@link SideShape#footing}.
     *
     * @throws IllegalArgumentException if the place is in the base round or beyond its section
     */
    public Footing footing(Place place) {
        return having(place.section()).footing(place);
    }

    /**
     * Where this stitch would land at this place; see {@link SideShape#landing}.
     *
     * @throws IllegalArgumentException if the place is in the base round or beyond its section, or the stitch does not drop
     */
    public Landing landing(Place place, Stitch stitch) {
        return having(place.section()).landing(place, stitch);
    }

    /** The last column in which rounds can be started on every side: the last of the first repeat. */
    public int lastStart() {
        return sides.stream().mapToInt(side -> side.a() + side.w()).min().orElseThrow();
    }

    private SideShape having(Section section) {
        for (Side side : Side.values()) {
            if (Section.of(side).contains(section)) {
                return on(side);
            }
        }
        throw new IllegalArgumentException("no side has the section " + section);
    }

    /** The stitches on each side in that round when the repeat is worked so often. */
    public PerSide<Integer> stitches(int round, PerSide<Integer> repeats) {
        return PerSide.each(side -> on(side).stitches(round, repeats.get(side)));
    }

    /** The stitches on all sides together in that round when the repeat is worked so often. */
    public long allStitches(int round, PerSide<Integer> repeats) {
        return PerSide.sum(stitches(round, repeats));
    }

    /** A + B + 2r: the fewest stitches that a side can have in that round; the corner sections are the same on every side. */
    public int fewestStitches(int round) {
        return on(Side.FIRST).fewestStitches(round);
    }

    /** How often the repeat is worked on sides with so many stitches; empty if one of them does not close. */
    public Optional<PerSide<Integer>> repeats(int round, PerSide<Integer> stitches) {
        PerSide<OptionalInt> repeats = PerSide.each(side -> on(side).repeats(round, stitches.get(side)));
        return repeats.stream().allMatch(OptionalInt::isPresent)
                ? Optional.of(repeats.map(OptionalInt::getAsInt))
                : Optional.empty();
    }

    /** Whether the repeat comes out even on every side. */
    public boolean closes(int round, PerSide<Integer> stitches) {
        return repeats(round, stitches).isPresent();
    }
}
