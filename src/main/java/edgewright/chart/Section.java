package edgewright.chart;

import java.util.List;
import java.util.Optional;

/**
 * One of the three parts of a side, in working order: from the corner just turned to the next one.
 *
 * <p>In round r the part from the corner has A + r stitches, the repeat w stitches and the part to the corner B + r
 * stitches. A, B and w are constants of the chart; see {@link SideShape}.
 */
public enum Section {
    /** From the corner just turned up to the first repeat. It grows by one stitch a round, at the corner. */
    FROM_CORNER("fromCorner"),
    /** The stitches that are worked over and over, any number of times, none included. */
    REPEAT("repeat"),
    /** From the last repeat up to the next corner. It grows by one stitch a round, at the corner. */
    TO_CORNER("toCorner");

    private static final List<Section> ALL = List.of(values());

    private final String member;

    Section(String member) {
        this.member = member;
    }

    /**
     * How much higher the place of a fabric column is one round up: 1 in the part from the corner, which grows at its first place,
     * else 0.
     */
    public int shift() {
        return this == FROM_CORNER ? 1 : 0;
    }

    /** The place of a fabric column so many rounds up, or down where {@code rounds} is negative; it may lie past the section. */
    public int placeAbove(int place, int rounds) {
        return place + rounds * shift();
    }

    /** The sections of this side in working order; they are the same on every side. */
    public static List<Section> of(Side side) {
        return ALL;
    }

    /** Whether it is worked any number of times on a side; the others are worked once. */
    public boolean isRepeat() {
        return this == REPEAT;
    }

    /** How often it is worked on a side with so many repeats. */
    public int times(int repeats) {
        return isRepeat() ? repeats : 1;
    }

    /** The corner that it touches; empty for a repeat. */
    public Optional<CornerEnd> corner() {
        return switch (this) {
            case FROM_CORNER -> Optional.of(CornerEnd.START);
            case REPEAT -> Optional.empty();
            case TO_CORNER -> Optional.of(CornerEnd.NEXT);
        };
    }

    /** The member that holds this section in a chart file, and its name wherever findings are given as data. */
    public String member() {
        return member;
    }
}
