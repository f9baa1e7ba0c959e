package edgewright.fit;

import java.util.Objects;
import java.util.Optional;

/**
 * Part of the way along a side: so many stitches worked as they are, then one change, and this so many times over.
 *
 * @param work 0 or more
 * @param change empty in the last block of a side, which only works on to the corner
 * @param times 1 or more
 */
public record ChangeBlock(int work, Optional<CountChange> change, int times) {
    public ChangeBlock {
        Objects.requireNonNull(change);
        if (work < 0 || times < 1) {
            throw new IllegalArgumentException("work " + work + ", " + times + " times");
        }
    }
}
