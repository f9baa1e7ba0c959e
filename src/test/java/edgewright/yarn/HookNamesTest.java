package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.HookSize;
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

    /** From memory: the Craft Yarn Council's table, for hooks that the other table does not name. */
    @ParameterizedTest
    @CsvSource({"11.5, P-16", "15.75, Q", "16, Q", "19, S"})
    void a_thick_hook_has_the_us_name_of_the_councils_table(double mm, String name) {
        assertThat(HookNames.us(HookSize.ofMm(mm))).isEqualTo(Optional.of(name));
    }

    /**
     * Where both tables have a number, and the same. Sources: https://matifs.com/crochet-hooks-size-chart
     * https://cdn.shopify.com/s/files/1/2284/3931/files/Knitting_Needle_Conversion_Chart_0abb8724-d65e-4ae3-84d1-9a41893c7f1d.pdf
     */
    @ParameterizedTest
    @CsvSource({
        "2, 14",
        "2.25, 13",
        "2.75, 12",
        "3.25, 10",
        "4, 8",
        "4.5, 7",
        "5, 6",
        "5.5, 5",
        "6, 4",
        "6.5, 3",
        "8, 0",
        "9, 00",
        "10, 000"
    })
    void a_hook_has_the_uk_number_on_which_both_tables_agree(double mm, String number) {
        assertThat(HookNames.uk(HookSize.ofMm(mm))).isEqualTo(Optional.of(number));
    }

    /** By the same tables: 3 and 3.75 mm stand in one of them only, 3.5 mm in the other only, 7 mm in one, 2.5 mm in none. */
    @ParameterizedTest
    @CsvSource({"2.5", "3", "3.5", "3.75", "7"})
    void a_hook_that_only_one_table_numbers_has_no_uk_number(double mm) {
        assertThat(HookNames.uk(HookSize.ofMm(mm))).isEmpty();
    }

    @Test
    void a_hook_thicker_than_any_old_one_has_no_uk_number() {
        assertThat(HookNames.uk(HookSize.ofMm(12))).isEmpty();
    }
}
