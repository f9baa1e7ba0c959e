package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LengthsTest {

    @Test
    void aLengthIsTypedWithAPointOrACommaOrNotAtAll() {
        assertThat(Stream.of("112", " 4.5 ", "4,5", "").map(Lengths::parse))
                .containsExactly(
                        Optional.of(OptionalDouble.of(112)),
                        Optional.of(OptionalDouble.of(4.5)),
                        Optional.of(OptionalDouble.of(4.5)),
                        Optional.of(OptionalDouble.empty()));
    }

    @Test
    void anythingElseIsNoLength() {
        assertThat(Stream.of("-1", "1e3", "four", "1234567", "1.2.3").map(Lengths::parse))
                .containsOnly(Optional.empty());
    }

    @Test
    void aLengthIsShownWithNoDigitsThatSayNothing() {
        assertThat(Stream.of(
                                OptionalDouble.of(160),
                                OptionalDouble.of(4.5),
                                OptionalDouble.of(0.125),
                                OptionalDouble.empty())
                        .map(Lengths::text))
                .containsExactly("160", "4.5", "0.125", "");
    }
}
