package edgewright.chart;

import java.util.Comparator;

/**
 * Where a stitch stands in a chart: its round, its section of the side, and its place in that section.
 *
 * <p>Rounds count outwards; 0 is the base round, already on the piece, and charted rounds start at 1. Places count from 1
 * in working order. A place may lie beyond the end of its section; only a chart can tell. Ordered by round, section and
 * place: the order in which a side is worked.
 *
 * @param round 0 or more
 * @param place 1 or more
 */
public record Place(int round, Section section, int place) implements Comparable<Place> {
    private static final Comparator<Place> WORKING_ORDER =
            Comparator.comparingInt(Place::round).thenComparing(Place::section).thenComparingInt(Place::place);

    public Place {
        if (round < 0 || place < 1) {
            throw new IllegalArgumentException("no stitch stands at round " + round + ", place " + place);
        }
    }

    @Override
    public int compareTo(Place other) {
        return WORKING_ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return "round " + round + ", " + section.member() + " " + place;
    }
}
