package edgewright.chart;

import java.util.Objects;

/**
 * What was counted on the four sides of a piece in one of its rounds.
 *
 * @param round of the front, 0 for the base round; or of the back layer, counted outwards from 1
 * @param stitches 0 to {@value #MOST_STITCHES} on each side, corner chains not counted; they need not come out even
 */
public record RoundCounts(int round, PerSide<Integer> stitches, Extras extras) {
    /** The most stitches of a side: more no side of a blanket has. */
    public static final int MOST_STITCHES = 10_000;

    public RoundCounts {
        Objects.requireNonNull(extras);
        if (round < 0 || round > Chart.MOST_ROUNDS) {
            throw new IllegalArgumentException("round " + round + ": expected 0 to " + Chart.MOST_ROUNDS);
        }
        if (stitches.stream().anyMatch(count -> count < 0 || count > MOST_STITCHES)) {
            throw new IllegalArgumentException("counts " + stitches + ": expected 0 to " + MOST_STITCHES);
        }
    }

    /** Counts with no unknown members. */
    public RoundCounts(int round, PerSide<Integer> stitches) {
        this(round, stitches, Extras.NONE);
    }
}
