package edgewright.words.tree;

import edgewright.chart.Side;
import java.util.List;

/** The stitches on each of the four sides, corner chains not counted. */
public record SideCounts(int top, int left, int bottom, int right) {
    public SideCounts {
        if (Math.min(Math.min(top, left), Math.min(bottom, right)) < 0) {
            throw new IllegalArgumentException("a side cannot have fewer than no stitches");
        }
    }

    /** The same number on each side. */
    public static SideCounts all(int stitches) {
        return new SideCounts(stitches, stitches, stitches, stitches);
    }

    /** Whether top and bottom have the same number, and left and right too. */
    public boolean oppositeSidesAreAlike() {
        return top == bottom && left == right;
    }

    /** The number of this side. */
    public int of(Side side) {
        return switch (side) {
            case TOP -> top;
            case LEFT -> left;
            case BOTTOM -> bottom;
            case RIGHT -> right;
        };
    }

    /** The four numbers in the order in which a right-handed maker comes to the sides: top, left, bottom, right. */
    public List<Integer> inWorkingOrder() {
        return List.of(top, left, bottom, right);
    }
}
