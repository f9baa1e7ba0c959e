package edgewright.assist.stack;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.SideShape;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Whether one border closes round another, and after how many plain rounds, held to counting. */
class BaseCountsTest {
    private static final int WIDEST = 16;

    @Test
    void countingFindsNothingElseForAnyRepeatsUpToSixteenAndAllRemainders() {
        int compared = 0;
        int none = 0;
        for (int w1 = 1; w1 <= WIDEST; w1++) {
            for (int w2 = 1; w2 <= WIDEST; w2++) {
                for (int k1 = 0; k1 < w1; k1++) {
                    for (int k2 = 0; k2 < w2; k2++) {
                        SideShape inner = new SideShape(k1 / 2, w1, k1 - k1 / 2);
                        SideShape outer = new SideShape(k2, w2, 0);
                        for (int rounds = 1; rounds <= 3; rounds++) {
                            OptionalInt fewest = BaseCounts.fewestBetween(inner, rounds, outer);
                            assertThat(fewest)
                                    .as("%s, %d rounds, %s", inner, rounds, outer)
                                    .isEqualTo(counted(inner, rounds, outer));
                            compared++;
                            none += fewest.isEmpty() ? 1 : 0;
                        }
                    }
                }
            }
        }
        assertThat(compared).isEqualTo(3 * 136 * 136);
        // Both repeats even (72 remainders of 36 widths in all, either way), and the sums of A and B of another parity:
        // half.
        assertThat(none).isEqualTo(3 * 72 * 72 / 2);
    }

    /** Tries every number of plain rounds, and every count of stitches for each, on the shapes themselves. */
    private static OptionalInt counted(SideShape inner, int rounds, SideShape outer) {
        for (int between = 0; between <= 2 * WIDEST; between++) {
            int before = rounds + between;
            for (int stitches = 0; stitches <= 2 * WIDEST * WIDEST; stitches++) {
                if (inner.closes(0, stitches) && outer.closes(0, stitches + 2 * before)) {
                    return OptionalInt.of(between);
                }
            }
        }
        return OptionalInt.empty();
    }

    @Test
    void bothCloseAgainAfterThePeriodAndNotBefore() {
        for (int w1 = 1; w1 <= WIDEST; w1++) {
            for (int w2 = 1; w2 <= WIDEST; w2++) {
                SideShape inner = new SideShape(1, w1, 2);
                SideShape outer = new SideShape(3, w2, 2);
                int first = BaseCounts.fewestBetween(inner, 1, outer).orElse(-1);
                int next = first + 1;
                while (first >= 0 && BaseCounts.ofBoth(inner, 1, next, outer).isEmpty()) {
                    next++;
                }
                if (first >= 0) {
                    assertThat(next - first).isEqualTo(BaseCounts.period(inner, outer));
                }
            }
        }
    }
}
