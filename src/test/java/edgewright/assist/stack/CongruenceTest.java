package edgewright.assist.stack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cc.redberry.rings.ChineseRemainders;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CongruenceTest {
    @Test
    void allPairsOfRemaindersUpToSixteenHaveTheNumbersThatCountingFinds() {
        for (int m = 1; m <= 16; m++) {
            for (int n = 1; n <= 16; n++) {
                for (int a = 0; a < m; a++) {
                    for (int b = 0; b < n; b++) {
                        Optional<Congruence> both = new Congruence(a, m).and(new Congruence(b, n));
                        assertThat(both).isEqualTo(counted(a, m, b, n));
                    }
                }
            }
        }
    }

    /** Counts up to the product, and asks after how many numbers the first one comes again. */
    private static Optional<Congruence> counted(int a, int m, int b, int n) {
        int first = -1;
        for (int number = 0; number < 2 * m * n; number++) {
            if (number % m == a && number % n == b) {
                if (first >= 0) {
                    return Optional.of(new Congruence(first, number - first));
                }
                first = number;
            }
        }
        return first < 0 ? Optional.empty() : Optional.of(new Congruence(first, (long) m * n));
    }

    @Test
    void aLibraryOfNumberTheoryFindsTheSameWhereWidthsHaveNoCommonDivisor() {
        int compared = 0;
        for (int m = 2; m <= 2_000; m += 37) {
            for (int n = 3; n <= 2_000; n += 41) {
                if (gcd(m, n) > 1) {
                    continue;
                }
                for (int step = 0; step < 5; step++) {
                    long a = (step * 7_919L) % m;
                    long b = (step * 104_729L + 1) % n;
                    long remainder = ChineseRemainders.ChineseRemainders(new long[] {m, n}, new long[] {a, b});
                    assertThat(new Congruence(a, m).and(new Congruence(b, n)))
                            .contains(Congruence.of(remainder, (long) m * n));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(5_000);
    }

    private static int gcd(int one, int two) {
        return two == 0 ? one : gcd(two, one % two);
    }

    @Test
    void whatIsNoRemainderIsRefused() {
        assertThatThrownBy(() -> new Congruence(3, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Congruence(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Congruence.of(-5, 3)).isEqualTo(new Congruence(1, 3));
    }
}
