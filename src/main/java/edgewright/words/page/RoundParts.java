package edgewright.words.page;

import java.util.List;
import java.util.Objects;

/**
 * What is to be done in one round, taken apart for a page that sets each part in a place of its own. Where a line must not be
 * broken stands a no-break space (U+00A0).
 */
public sealed interface RoundParts {
    /**
     * A round that is worked alike on all sides.
     *
     * @param fromCorner what stands before the group; may be empty
     * @param repeat the group, and how far it goes on; empty if there is none
     * @param toCorner what stands after the group; may be empty
     * @param corner the chains of the corner, not called a corner
     * @param sides on which sides all of this is worked
     * @param start where the round begins, in a pattern in which rounds begin along a side; else empty
     */
    record OfAllSides(String fromCorner, String repeat, String toCorner, String corner, String sides, String start)
            implements RoundParts {
        public OfAllSides {
            Objects.requireNonNull(fromCorner);
            Objects.requireNonNull(repeat);
            Objects.requireNonNull(toCorner);
            Objects.requireNonNull(corner);
            Objects.requireNonNull(sides);
            Objects.requireNonNull(start);
        }

        /** Whether there is nothing but the group. */
        public boolean isGroupAlone() {
            return fromCorner.isEmpty() && toCorner.isEmpty();
        }
    }

    /**
     * A round that puts the counts right.
     *
     * @param lines what it is for, then what is worked along each side in working order
     */
    record OfEachSide(List<String> lines) implements RoundParts {
        public OfEachSide {
            lines = List.copyOf(lines);
        }
    }
}
