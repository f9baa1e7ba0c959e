package edgewright.words.technique;

import java.util.List;
import java.util.Objects;

/**
 * A technique in words.
 *
 * @param title what it is, on one line
 * @param alternative what its figure shows, for those who do not see it
 * @param steps what to do, in the order of the numbers in its figure
 */
public record ToldTechnique(ShownTechnique shown, String title, String alternative, List<String> steps) {
    public ToldTechnique {
        Objects.requireNonNull(shown);
        Objects.requireNonNull(title);
        Objects.requireNonNull(alternative);
        steps = List.copyOf(steps);
    }
}
