package edgewright.fit;

import edgewright.chart.BorderShape;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The stitches that the four sides should have in one round, so that the repeat comes out even on each. All numbers are
 * stitches, corner chains not counted.
 *
 * <p>A side closes in round R with S stitches if S = A + B + 2R (mod w) and S is A + B + 2R at least. The law holds in
 * every round if it holds in one, since a side and its corner sections both grow by two.
 *
 * @param round the round in which the sides were counted
 * @param counted the stitches that the sides have
 * @param wanted the stitches that they should have; each side closes
 */
public record Targets(BorderShape border, int round, PerSide<Integer> counted, PerSide<Integer> wanted) {
    /** @throws IllegalArgumentException if a side would not close */
    public Targets {
        if (!border.closes(round, wanted)) {
            throw new IllegalArgumentException(wanted + " do not close in round " + round);
        }
    }

    /**
     * The targets with the least total change, tied sides equal. Of several with the same total the one that adds most; on
     * tied sides that are far apart this is the largest number between the two that closes.
     *
     * @param counted the stitches on each side; a side may have fewer than A + B + 2R
     */
    public static Targets closest(BorderShape border, int round, PerSide<Integer> counted, Ties ties) {
        return new Targets(
                border,
                round,
                counted,
                PerSide.each(side -> closest(
                        border.on(side),
                        round,
                        ties.group(side).stream().mapToInt(counted::get).toArray())));
    }

    /** Target less count: above 0 where stitches must be added, below 0 where they must be lost. */
    public int change(Side side) {
        return wanted.get(side) - counted.get(side);
    }

    /** The stitches added and the stitches lost on all four sides, together. */
    public long totalChange() {
        return PerSide.sum(PerSide.each(side -> Math.abs(change(side))));
    }

    /** How often the repeat is worked on each side. */
    public PerSide<Integer> repeats() {
        return border.repeats(round, wanted).orElseThrow();
    }

    /** The next larger number that closes on this side: one repeat more. */
    public int larger(Side side) {
        return wanted.get(side) + border.on(side).w();
    }

    /** The next smaller number that closes on this side: one repeat less. Empty if no repeat is left to leave out. */
    public OptionalInt smaller(Side side) {
        int smaller = wanted.get(side) - border.on(side).w();
        return smaller < border.fewestStitches(round) ? OptionalInt.empty() : OptionalInt.of(smaller);
    }

    /**
     * One number for all of these sides. Any number between the smallest and the largest count costs the same, so the largest
     * of them that closes is best; where none does, it is the next one below them or the next one above.
     */
    private static int closest(SideShape shape, int round, int... counts) {
        int least = IntStream.of(counts).min().orElseThrow();
        int most = IntStream.of(counts).max().orElseThrow();
        int above = most + shape.toAdd(round, most);
        OptionalInt lose = shape.toLose(round, most);
        if (above == most || lose.isEmpty()) {
            return above;
        }
        int below = most - lose.getAsInt();
        return below >= least || cost(below, counts) < cost(above, counts) ? below : above;
    }

    private static long cost(int target, int... counts) {
        return IntStream.of(counts).mapToLong(count -> Math.abs(target - count)).sum();
    }
}
