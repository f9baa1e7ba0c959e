package edgewright.words.tree;

import edgewright.chart.Side;
import java.util.List;

/**
 * What is worked in a round in which the counts of the sides are put right: each side has words of its own, from the corner
 * just turned to the next one.
 *
 * @param sides four: top, left, bottom, right; something is worked on each
 */
public record ChangedSides(List<List<ChangingStep>> sides) {
    public ChangedSides {
        sides = sides.stream().map(List::copyOf).toList();
        if (sides.size() != Side.values().length || sides.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("words for four sides are expected, not " + sides);
        }
    }

    /** What is worked on this side. */
    public List<ChangingStep> of(Side side) {
        return sides.get(side.ordinal());
    }
}
