package edgewright.yarn;

import edgewright.texts.Bundle;
import java.util.Locale;

/** The texts of this package, and its numbers as they stand in them. */
final class YarnTexts {
    static final Bundle BUNDLE = Bundle.of("edgewright.yarn.yarn");

    private YarnTexts() {}

    /** The number with that many digits after its point. */
    static String number(double number, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", number);
    }

    /** The number with no more digits than it needs, two at most. */
    static String shortest(double number) {
        return number(number, 2).replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
