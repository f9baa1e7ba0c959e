package edgewright.words.grammar;

import edgewright.chart.Side;
import edgewright.chart.Stitch;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One thing that the words of a round say, as they say it. */
public sealed interface Item {
    /** Where it stands. */
    Lexeme at();

    /**
     * The same stitch so many times.
     *
     * @param inCorner whether it is said to go into the corner
     */
    record Work(Lexeme at, int count, Stitch stitch, boolean inCorner) implements Item {}

    /** Chains that miss no stitch: those of a corner, or the one that a round begins with. */
    record Chains(Lexeme at, int count) implements Item {}

    /**
     * Items that are worked a number of times.
     *
     * @param times how often, the first time counted; for each size
     * @param unclear whether the words could also mean once less
     */
    record Times(Lexeme at, List<Item> items, List<Integer> times, boolean unclear) implements Item {
        public Times {
            items = List.copyOf(items);
            times = List.copyOf(times);
        }
    }

    /** Items that are worked as often as they fit. */
    record Open(Lexeme at, List<Item> items, Extent extent) implements Item {
        public Open {
            items = List.copyOf(items);
        }
    }

    /**
     * A corner.
     *
     * @param before the stitch before the chains that goes into the corner; empty if it is told with the side
     * @param chains empty where the corner is only named, and told elsewhere
     * @param after the stitch after the chains, likewise
     * @param each whether every corner is meant
     */
    record Turn(Lexeme at, Optional<Stitch> before, Optional<Integer> chains, Optional<Stitch> after, boolean each)
            implements Item {}

    /** From here to the next of its kind the words are for these sides. */
    record ForSides(Lexeme at, Set<Side> sides) implements Item {
        public ForSides {
            sides = Set.copyOf(sides);
        }
    }

    /** Where the last repeat of a group ends: the second sign within it. */
    record EndMark(Lexeme at) implements Item {}

    /** What was said is for all sides. */
    record Alike(Lexeme at) implements Item {}

    /** These on one side, where of two numbers of times the second is that of left and right. */
    static List<Item> ofSide(List<Item> items, Side side) {
        int index = side == Side.TOP || side == Side.BOTTOM ? 0 : 1;
        return items.stream()
                .map(item -> item instanceof Times times && times.times().size() == 2
                        ? new Times(
                                times.at(),
                                ofSide(times.items(), side),
                                List.of(times.times().get(index)),
                                times.unclear())
                        : item)
                .toList();
    }

    /** Whether there is a corner in it. */
    default boolean turns() {
        if (this instanceof Times times) {
            return times.items().stream().anyMatch(Item::turns);
        }
        return this instanceof Turn
                || (this instanceof Open open && open.items().stream().anyMatch(Item::turns));
    }
}
