package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HookSizeTest {

    @Test
    void one_size_below_5_mm_is_4_and_a_half() {
        // Source: common practice, no source.
        assertThat(HookSize.ofMm(5).smaller()).isEqualTo(Optional.of(HookSize.ofMm(4.5)));
    }

    @Test
    void the_listed_sizes_are_those_of_the_published_tables() {
        // Sources: https://matifs.com/crochet-hooks-size-chart (2 to 10 mm) and
        // https://cdn.shopify.com/s/files/1/2284/3931/files/Knitting_Needle_Conversion_Chart_0abb8724-d65e-4ae3-84d1-9a41893c7f1d.pdf
        assertThat(HookSize.listed().stream().map(HookSize::toString))
                .containsExactly(
                        "2", "2.25", "2.5", "2.75", "3", "3.25", "3.5", "3.75", "4", "4.5", "5", "5.5", "6", "6.5", "7",
                        "8", "9", "10", "12", "15");
    }

    @ParameterizedTest
    @CsvSource({"4.25, 4", "9, 8", "2.25, 2", "20, 15"})
    void a_hook_between_the_listed_sizes_goes_down_to_the_next_one_listed(double hook, double smaller) {
        assertThat(HookSize.ofMm(hook).smaller()).isEqualTo(Optional.of(HookSize.ofMm(smaller)));
    }

    @Test
    void below_the_thinnest_there_is_none() {
        assertThat(HookSize.ofMm(2).smaller()).isEmpty();
        assertThatThrownBy(() -> HookSize.ofMm(0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(HookSize.ofMm(2.05)).hasToString("2.05");
        assertThat(HookSize.ofMm(2.05).mm()).isEqualTo(2.05);
    }
}
