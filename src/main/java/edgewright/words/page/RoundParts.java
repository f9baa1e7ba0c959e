package edgewright.words.page;

import java.util.List;
import java.util.Objects;

/**
 * The words of one round taken apart, for a page that sets each part in a place of its own. A part is empty where the round
 * has nothing to say there. Where a line must not be broken stands a no-break space (U+00A0).
 *
 * @param head the round, its yarn and what is said of the counts
 * @param start where the yarn is joined, and what is worked from there to the first corner; empty where a round is begun at
 *     a corner
 * @param fromCorner what stands before the group
 * @param repeat the group, and how far it goes on
 * @param toCorner what stands after the group
 * @param corner the chains of the corner
 * @param changes what is worked along each side in a round that puts the counts right, in working order; then nothing else
 *     but the head is said. Empty for any other round
 * @param sides on which sides all of this is worked
 * @param end what is worked from the last corner to where the yarn was joined; empty where {@code start} is
 */
public record RoundParts(
        String head,
        String start,
        String fromCorner,
        String repeat,
        String toCorner,
        String corner,
        List<String> changes,
        String sides,
        String end) {
    public RoundParts {
        Objects.requireNonNull(head);
        Objects.requireNonNull(start);
        Objects.requireNonNull(fromCorner);
        Objects.requireNonNull(repeat);
        Objects.requireNonNull(toCorner);
        Objects.requireNonNull(corner);
        changes = List.copyOf(changes);
        Objects.requireNonNull(sides);
        Objects.requireNonNull(end);
    }
}
