package edgewright.words.tree;

import edgewright.chart.PerSide;
import java.util.Objects;
import java.util.Optional;

/**
 * What a pattern states about the stitches on a side in one round. Either part, or both, may be unsaid.
 *
 * @param multiple the numbers that a side may have
 * @param counts the numbers that the sides do have, in a pattern for one size
 */
public record SideSize(Optional<Multiple> multiple, Optional<PerSide<Integer>> counts) {
    /** Nothing is said. */
    public static final SideSize UNSTATED = new SideSize(Optional.empty(), Optional.empty());

    public SideSize {
        Objects.requireNonNull(multiple);
        if (counts.stream().flatMap(PerSide::stream).anyMatch(stitches -> stitches < 0)) {
            throw new IllegalArgumentException("a side cannot have fewer than no stitches");
        }
    }
}
