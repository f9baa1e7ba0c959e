package edgewright.assist.picture;

import edgewright.chart.Yarn;

/**
 * What is wanted of one cell of a picture.
 *
 * @param yarn the id of the yarn that is to show; empty if any will do
 * @param weight what it costs if another yarn shows, 1 to {@value #MOST_WEIGHT}; 0 if any will do
 * @param must whether it is to show before all else, whatever that costs in other cells
 */
public record Wanted(String yarn, int weight, boolean must) {
    /** The heaviest weight. */
    public static final int MOST_WEIGHT = 1_000;

    /** Any yarn will do. */
    public static final Wanted NEVER_MIND = new Wanted("", 0, false);

    /** @throws IllegalArgumentException if the yarn can have no such id, or the weight is none */
    public Wanted {
        if (yarn.isEmpty()) {
            if (weight != 0 || must) {
                throw new IllegalArgumentException("where any yarn will do there is no weight and no must");
            }
        } else if (!Yarn.isId(yarn) || weight < 1 || weight > MOST_WEIGHT) {
            throw new IllegalArgumentException(
                    "yarn '" + yarn + "', weight " + weight + ": expected an id, and 1 to 1000");
        }
    }

    /** That this yarn shows, with the usual weight of 1. */
    public static Wanted of(String yarn) {
        return new Wanted(yarn, 1, false);
    }

    /** Whether any yarn will do. */
    public boolean isNeverMind() {
        return yarn.isEmpty();
    }

    /** The same yarn with another weight. */
    public Wanted withWeight(int other) {
        return new Wanted(yarn, other, must);
    }

    /** Whether it is a miss when that yarn shows. */
    boolean isMissedBy(String shows) {
        return !isNeverMind() && !yarn.equals(shows);
    }
}
