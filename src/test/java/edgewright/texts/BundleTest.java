package edgewright.texts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;

class BundleTest {
    @Test
    void aListHasCommasAndALastWord() {
        assertThat(List.of(
                        Bundle.and(List.of()),
                        Bundle.and(List.of(1)),
                        Bundle.and(List.of(1, 2)),
                        Bundle.and(List.of(1, 2, 3)),
                        Bundle.or(List.of(1, 2, 3)),
                        Bundle.commas(List.of(1, 2, 3))))
                .containsExactly("", "1", "1 and 2", "1, 2 and 3", "1, 2 or 3", "1, 2, 3");
    }

    @Test
    void valuesAreFilledInAsTheyAre() {
        assertThat(Bundle.filled("the maker's {1}, {0} times, {1}", 12_345, "$1 {0}"))
                .isEqualTo("the maker's $1 {0}, 12345 times, $1 {0}");
    }

    @Test
    void aTextBeginsWithACapital() {
        assertThat(List.of(Bundle.capital(""), Bundle.capital("left side"), Bundle.capital("2 rounds")))
                .containsExactly("", "Left side", "2 rounds");
    }

    @Test
    void aTextThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> Bundle.of("edgewright.booklet.booklet").text("nothing"))
                .isInstanceOf(MissingResourceException.class)
                .hasMessageContaining("nothing");
    }
}
