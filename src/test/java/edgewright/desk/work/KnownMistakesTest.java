package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** One mistake that comes again and again is told of once. */
class KnownMistakesTest {
    private final KnownMistakes mistakes = new KnownMistakes();

    @Test
    void aMistakeIsNewOnceAndAnotherKindOrPlaceIsAnotherMistake() {
        for (int i = 0; i < 3; i++) {
            assertThat(mistakes.isNew(new IllegalStateException("the " + i))).isEqualTo(i == 0);
        }
        assertThat(mistakes.isNew(new IllegalArgumentException("the 0"))).isTrue();
        assertThat(mistakes.isNew(new IllegalStateException("elsewhere"))).isTrue();
    }

    @Test
    void aMistakeThatIsComeToByAnotherWayIsTheSame() {
        assertThat(mistakes.isNew(comeTo(0))).isTrue();
        assertThat(mistakes.isNew(comeTo(3))).isFalse();
        assertThat(mistakes.isNew(unread("nine"))).isTrue();
        assertThat(mistakes.isNew(unread("ten"))).isFalse();
    }

    private static RuntimeException comeTo(int ways) {
        return ways == 0 ? new IllegalStateException("cannot be painted") : comeTo(ways - 1);
    }

    /** Thrown by the library, at one place of ours. */
    private static RuntimeException unread(String number) {
        try {
            return new IllegalStateException(number + " is " + Integer.parseInt(number));
        } catch (NumberFormatException e) {
            return e;
        }
    }
}
