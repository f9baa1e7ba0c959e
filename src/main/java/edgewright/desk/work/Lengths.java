package edgewright.desk.work;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Lengths and weights as people type them: digits with a point or a comma, or nothing at all. */
public final class Lengths {
    private Lengths() {}

    /** The number in a field, which may be blank; empty if it is something else than a number from 0 to 1,000,000. */
    public static Optional<OptionalDouble> parse(String text) {
        String bare = text.strip().replace(',', '.');
        if (bare.isEmpty()) {
            return Optional.of(OptionalDouble.empty());
        }
        return bare.matches("[0-9]{1,6}(\\.[0-9]{0,3})?")
                ? Optional.of(OptionalDouble.of(Double.parseDouble(bare)))
                : Optional.empty();
    }

    /** A number as it is typed, with no digits that say nothing. */
    public static String text(OptionalDouble number) {
        return number.isEmpty()
                ? ""
                : String.format(Locale.ROOT, "%.3f", number.getAsDouble()).replaceAll("\\.?0+$", "");
    }
}
