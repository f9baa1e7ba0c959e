package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.HookSize;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HookNamesTest {

    /**
     * Source:
     * https://cdn.shopify.com/s/files/1/2284/3931/files/Knitting_Needle_Conversion_Chart_0abb8724-d65e-4ae3-84d1-9a41893c7f1d.pdf
     */
    @ParameterizedTest
    @CsvSource({
        "2.25, B-1",
        "2.75, C-2",
        "3.25, D-3",
        "3.5, E-4",
        "3.75, F-5",
        "4, G-6",
        "4.5, 7",
        "5, H-8",
        "5.5, I-9",
        "6, J-10",
        "6.5, K-10\u00bd",
        "8, L-11",
        "9, M/N-13",
        "10, N/P-15",
        "15, P/Q"
    })
    void a_hook_has_the_us_name_of_the_published_table(double mm, String name) {
        assertThat(HookNames.us(HookSize.ofMm(mm))).isEqualTo(Optional.of(name));
    }

    /** 7 mm has no US name in that table; the tables differ about 12 mm, so none is given. */
    @ParameterizedTest
    @CsvSource({"7", "12", "4.25"})
    void a_hook_without_an_agreed_us_name_has_none(double mm) {
        assertThat(HookNames.us(HookSize.ofMm(mm))).isEmpty();
    }

    /**
     * Where the three tables agree. Sources: https://matifs.com/crochet-hooks-size-chart
     * https://cdn.shopify.com/s/files/1/0218/9234/files/Tangled_Yarn_Needle_Conversion_Chart_1.pdf
     * https://cdn.shopify.com/s/files/1/2284/3931/files/Knitting_Needle_Conversion_Chart_0abb8724-d65e-4ae3-84d1-9a41893c7f1d.pdf
     */
    @ParameterizedTest
    @CsvSource({"2, 14", "2.25, 13", "3.25, 10", "4, 8", "4.5, 7", "5, 6", "5.5, 5", "8, 0", "9, 00", "10, 000"})
    void a_hook_has_the_uk_number_of_all_three_tables(double mm, String number) {
        assertThat(HookNames.uk(HookSize.ofMm(mm))).isEqualTo(List.of(number));
    }

    /** The same sources, in their order. */
    @ParameterizedTest
    @CsvSource({"2.75, 12 11", "6, 4 3", "6.5, 3 2", "7, 1 2"})
    void where_the_tables_differ_each_number_stands(double mm, String numbers) {
        assertThat(HookNames.uk(HookSize.ofMm(mm))).isEqualTo(Arrays.asList(numbers.split(" ")));
    }

    @Test
    void a_hook_thicker_than_any_old_one_has_no_uk_number() {
        assertThat(HookNames.uk(HookSize.ofMm(12))).isEmpty();
    }
}
