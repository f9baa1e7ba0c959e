package edgewright.assist.stack;

import java.util.Optional;
import org.apache.commons.numbers.core.ArithmeticUtils;

/**
 * All whole numbers that leave one remainder when divided by another number.
 *
 * @param remainder from 0 to {@code modulus} - 1
 * @param modulus 1 or more
 */
record Congruence(long remainder, long modulus) {
    /** @throws IllegalArgumentException if the modulus is not above 0, or the remainder not below it */
    Congruence {
        if (modulus < 1 || remainder < 0 || remainder >= modulus) {
            throw new IllegalArgumentException(remainder + " modulo " + modulus);
        }
    }

    /** The numbers that differ from this one by multiples of the modulus. */
    static Congruence of(long number, long modulus) {
        return new Congruence(Math.floorMod(number, modulus), modulus);
    }

    /**
     * The numbers that are in both, by the Chinese remainder theorem for moduli that may have a common divisor: there are some if
     * and only if both remainders are the same modulo that divisor, and then they are one congruence modulo the least common
     * multiple. Source: Knuth, The Art of Computer Programming, volume 2, section 4.3.2, theorem C and exercise 3, from memory.
     */
    Optional<Congruence> and(Congruence other) {
        long divisor = ArithmeticUtils.gcd(modulus, other.modulus);
        long difference = other.remainder - remainder;
        if (difference % divisor != 0) {
            return Optional.empty();
        }
        long step = other.modulus / divisor;
        long times = Math.floorMod(difference / divisor * inverse(modulus / divisor, step), step);
        return Optional.of(of(remainder + modulus * times, modulus * step));
    }

    /** The number that makes 1 when multiplied by the first, modulo the second, with which it has no divisor in common. */
    private static long inverse(long number, long modulus) {
        long r0 = modulus;
        long r1 = Math.floorMod(number, modulus);
        long t0 = 0;
        long t1 = 1;
        while (r1 != 0) {
            long quotient = r0 / r1;
            long r2 = r0 - quotient * r1;
            long t2 = t0 - quotient * t1;
            r0 = r1;
            r1 = r2;
            t0 = t1;
            t1 = t2;
        }
        return Math.floorMod(t0, modulus);
    }
}
