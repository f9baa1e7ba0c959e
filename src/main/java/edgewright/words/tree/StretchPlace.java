package edgewright.words.tree;

import edgewright.words.tree.StartMark.Part;
import java.util.Objects;

/**
 * Where the words of a side tell of one of its stitches.
 *
 * @param part the part that tells of it
 * @param stitch counted from 1 in working order: in the part before the group from the corner, in the group from its first
 *     stitch in every working of it, after the group from the end of its last working
 */
public record StretchPlace(Part part, int stitch) {
    public StretchPlace {
        Objects.requireNonNull(part);
        if (stitch < 1) {
            throw new IllegalArgumentException("stitch " + stitch + " of a part");
        }
    }
}
