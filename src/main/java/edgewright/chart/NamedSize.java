package edgewright.chart;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * A size for which a designer writes a pattern. Opposite sides are alike.
 *
 * @param name what the designer calls it, in one line as {@link CleanText#oneLine} leaves it; not empty
 * @param unit in what the numbers are given
 * @param numbers of each side: how often the repeat is worked, or the stitches of the base round, corner chains not counted
 */
public record NamedSize(String name, Unit unit, PerSide<Integer> numbers, Extras extras) {
    /** The most sizes of a chart. */
    public static final int MOST = 8;

    /** The most repeats, or stitches, of a side. */
    public static final int MOST_OF_A_SIDE = PerSide.MOST_TYPED;

    /** In what a size is given. */
    public enum Unit {
        REPEATS,
        STITCHES
    }

    public NamedSize {
        name = CleanText.oneLine(name);
        Objects.requireNonNull(unit);
        Objects.requireNonNull(extras);
        if (name.isEmpty()) {
            throw new IllegalArgumentException("a size without a name");
        }
        if (!numbers.oppositeSidesAreAlike()) {
            throw new IllegalArgumentException("opposite sides that differ: " + numbers);
        }
        if (numbers.stream().anyMatch(number -> number < 0 || number > MOST_OF_A_SIDE)) {
            throw new IllegalArgumentException("numbers of a size: " + numbers);
        }
    }

    /** A size with no unknown members, given in repeats. */
    public static NamedSize ofRepeats(String name, int topAndBottom, int leftAndRight) {
        return new NamedSize(name, Unit.REPEATS, PerSide.pairs(topAndBottom, leftAndRight), Extras.NONE);
    }

    /** A size with no unknown members, given in stitches of the base round. */
    public static NamedSize ofStitches(String name, int topAndBottom, int leftAndRight) {
        return new NamedSize(name, Unit.STITCHES, PerSide.pairs(topAndBottom, leftAndRight), Extras.NONE);
    }

    /** How often the repeat is worked on each side of a chart of this shape, on which the size must close. */
    public PerSide<Integer> repeats(BorderShape border) {
        return unit == Unit.REPEATS ? numbers : border.repeats(0, numbers).orElseThrow();
    }

    /** The same on a chart of this shape: stitches that do not close there become the nearest that do, the more if two are. */
    NamedSize on(BorderShape border) {
        return unit == Unit.REPEATS
                ? this
                : new NamedSize(name, unit, PerSide.each(side -> nearest(border.on(side), numbers.get(side))), extras);
    }

    private static int nearest(SideShape shape, int stitches) {
        OptionalInt lost = shape.toLose(0, stitches);
        int added = shape.toAdd(0, stitches);
        boolean more = lost.isEmpty() || (added <= lost.getAsInt() && stitches + added <= MOST_OF_A_SIDE);
        return more ? stitches + added : stitches - lost.getAsInt();
    }
}
