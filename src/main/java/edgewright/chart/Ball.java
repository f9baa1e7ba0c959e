package edgewright.chart;

import java.util.Objects;

/**
 * What the band of a ball of yarn says.
 *
 * @param metres the length of its yarn; above 0
 * @param grams its weight; above 0
 */
public record Ball(double metres, double grams, Extras extras) {
    public Ball {
        Objects.requireNonNull(extras);
        Measures.requirePositive(metres, "metres in a ball");
        Measures.requirePositive(grams, "grams in a ball");
    }

    /** A ball with no unknown members. */
    public Ball(double metres, double grams) {
        this(metres, grams, Extras.NONE);
    }

    /** How long a gram of this yarn is. */
    public double metresInGram() {
        return metres / grams;
    }
}
