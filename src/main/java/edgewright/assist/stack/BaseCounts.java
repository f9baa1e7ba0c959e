package edgewright.assist.stack;

import edgewright.chart.SideShape;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.core.ArithmeticUtils;

/**
 * When one border closes round another. Law: sides grow by two stitches a round, so a border that begins after t rounds closes on
 * a base round of S stitches if and only if {@code S + 2t = A + B (mod w)}. The inner border begins after none, the outer one
 * after the inner rounds and the plain rounds between; there is a base round for both if and only if the two congruences agree
 * modulo the greatest common divisor of both repeats.
 */
final class BaseCounts {
    private BaseCounts() {}

    /** The counts of the base round with which a border closes that begins after so many rounds. */
    static Congruence of(SideShape shape, int before) {
        return Congruence.of((long) shape.fewestStitches(0) - SideShape.growth(before), shape.w());
    }

    /** The counts with which both close, with so many plain rounds between. */
    static Optional<Congruence> ofBoth(SideShape inner, int innerRounds, int between, SideShape outer) {
        return of(inner, 0).and(of(outer, innerRounds + between));
    }

    /** The fewest plain rounds with which both close; empty if no number of them does. */
    static OptionalInt fewestBetween(SideShape inner, int innerRounds, SideShape outer) {
        // What more rounds can change shows modulo the common divisor, and that repeats itself after as many rounds.
        int divisor = ArithmeticUtils.gcd(inner.w(), outer.w());
        for (int between = 0; between < divisor; between++) {
            if (ofBoth(inner, innerRounds, between, outer).isPresent()) {
                return OptionalInt.of(between);
            }
        }
        return OptionalInt.empty();
    }

    /** After how many plain rounds more both close again: half the common divisor of the repeats if that is even, else all of it. */
    static int period(SideShape inner, SideShape outer) {
        int divisor = ArithmeticUtils.gcd(inner.w(), outer.w());
        return divisor % SideShape.GROWTH == 0 ? divisor / SideShape.GROWTH : divisor;
    }
}
