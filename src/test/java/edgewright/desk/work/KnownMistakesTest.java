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
}
