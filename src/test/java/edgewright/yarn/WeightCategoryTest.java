package edgewright.yarn;

import static edgewright.yarn.WeightCategory.Edition.PRINT;
import static edgewright.yarn.WeightCategory.Edition.WEB;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.HookSize;
import edgewright.yarn.WeightCategory.Edition;
import edgewright.yarn.WeightCategory.Span;
import java.util.List;
import org.junit.jupiter.api.Test;

class WeightCategoryTest {

    /** Source: https://issuhub.com/view/index?id=3342&pageIndex=64 */
    @Test
    void the_printed_edition_is_as_published() {
        assertThat(table(PRINT))
                .containsExactly(
                        "0: 32-42 stitches, 1.5-2.25 mm",
                        "1: 21-32 stitches, 2.25-3.5 mm",
                        "2: 16-20 stitches, 3.5-4.5 mm",
                        "3: 12-17 stitches, 4.5-5.5 mm",
                        "4: 11-14 stitches, 5.5-6.5 mm",
                        "5: 8-11 stitches, 6.5-9 mm",
                        "6: 6-9 stitches, 9-16 mm",
                        "7: -5 stitches, 16- mm");
    }

    /**
     * Sources: https://cdn.shopify.com/s/files/1/0420/3118/6087/files/Yarn-Guide2.pdf (6 and 7) and
     * https://crochetnerd.com/tag/how-to-crochet/ (hooks of 6 and 7); the hooks of 0: from memory.
     */
    @Test
    void the_edition_on_the_web_differs_at_both_ends() {
        assertThat(table(WEB).subList(1, 6)).isEqualTo(table(PRINT).subList(1, 6));
        assertThat(List.of(table(WEB).get(0), table(WEB).get(6), table(WEB).get(7)))
                .containsExactly("0: 32-42 stitches, 1.4-1.6 mm", "6: 7-9 stitches, 9-15 mm", "7: -6 stitches, 15- mm");
    }

    @Test
    void a_hook_is_usual_if_either_edition_has_it() {
        assertThat(WeightCategory.isUsual(3, HookSize.ofMm(5))).isTrue();
        assertThat(WeightCategory.isUsual(3, HookSize.ofMm(4.5))).isTrue();
        assertThat(WeightCategory.isUsual(3, HookSize.ofMm(4))).isFalse();
        assertThat(WeightCategory.isUsual(6, HookSize.ofMm(16))).isTrue();
        assertThat(WeightCategory.isUsual(7, HookSize.ofMm(15))).isTrue();
        assertThat(WeightCategory.isUsual(7, HookSize.ofMm(30))).isTrue();
    }

    @Test
    void there_are_no_other_categories() {
        assertThatThrownBy(() -> WeightCategory.of(8, WEB))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("yarn weight 8: expected 0 to 7");
    }

    private static List<String> table(Edition edition) {
        return WeightCategory.all(edition).stream()
                .map(row -> row.number() + ": " + text(row.stitches()) + " stitches, " + text(row.hookMm()) + " mm")
                .toList();
    }

    private static String text(Span span) {
        return (span.from().isPresent() ? number(span.from().getAsDouble()) : "")
                + "-"
                + (span.to().isPresent() ? number(span.to().getAsDouble()) : "");
    }

    private static String number(double number) {
        return number == Math.rint(number) ? String.valueOf((int) number) : String.valueOf(number);
    }
}
