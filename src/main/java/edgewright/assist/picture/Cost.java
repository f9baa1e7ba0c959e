package edgewright.assist.picture;

import java.util.Comparator;

/**
 * What the stitches of a picture cost, as far as two choices of them are compared: first by what is wrong, then by how much work
 * it is. A difference of two costs is one too, so each number may be negative.
 *
 * @param musts how many cells do not show the yarn that they must show
 * @param weight the weight of all cells that do not show the yarn that is wanted
 * @param longs how many stitches are long
 */
public record Cost(long musts, long weight, long longs) implements Comparable<Cost> {
    static final Cost NOTHING = new Cost(0, 0, 0);

    private static final Comparator<Cost> ORDER = Comparator.comparingLong(Cost::musts)
            .thenComparingLong(Cost::weight)
            .thenComparingLong(Cost::longs);

    /** The cost of one column in the units of {@link ColumnTask}. */
    static Cost ofColumn(long units) {
        return new Cost(
                units / ColumnTask.MUST,
                units % ColumnTask.MUST / ColumnTask.WEIGHT,
                units % ColumnTask.WEIGHT / ColumnTask.LONG);
    }

    Cost plus(Cost other) {
        return new Cost(musts + other.musts, weight + other.weight, longs + other.longs);
    }

    Cost minus(Cost other) {
        return new Cost(musts - other.musts, weight - other.weight, longs - other.longs);
    }

    Cost times(int factor) {
        return new Cost(musts * factor, weight * factor, longs * factor);
    }

    boolean isLessThan(Cost other) {
        return compareTo(other) < 0;
    }

    @Override
    public int compareTo(Cost other) {
        return ORDER.compare(this, other);
    }
}
