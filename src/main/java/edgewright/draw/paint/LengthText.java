package edgewright.draw.paint;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as text. */
public final class LengthText {
    private LengthText() {}

    /** A length rounded to so many decimals, with a point, without zeros at its end; never {@code -0}. */
    public static String mm(double millimetres, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(millimetres).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
