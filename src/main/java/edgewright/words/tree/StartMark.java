package edgewright.words.tree;

import java.util.Objects;

/**
 * The sign in the words of a side that stands where a round starts.
 *
 * <p>In the group it stands for that one repeat which is where the round starts; a maker sees which by the marker.
 *
 * @param part the part of the side in which it stands
 * @param step how many steps of that part stand before it; it never stands in brackets
 */
public record StartMark(Part part, int step) {
    /** A part of the words of a side. */
    public enum Part {
        /** What is worked from the corner to the group, or all of it if there is no group. */
        BEFORE,
        /** What stands after the asterisk. */
        GROUP,
        /** What is worked from the group to the corner. */
        AFTER
    }

    public StartMark {
        Objects.requireNonNull(part);
        if (step < 0) {
            throw new IllegalArgumentException("a mark after " + step + " steps");
        }
    }
}
