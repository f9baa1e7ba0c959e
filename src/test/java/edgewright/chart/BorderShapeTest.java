package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A border whose sides differ is asked the same questions as one whose sides are alike, though no chart has such sides. */
class BorderShapeTest {
    private static final SideShape LEVEL = new SideShape(1, 8, 2);
    private static final SideShape UPRIGHT = new SideShape(1, 5, 2);
    private static final BorderShape BORDER = new BorderShape(PerSide.pairs(LEVEL, UPRIGHT));

    @Test
    void each_side_is_counted_by_its_own_repeat() {
        PerSide<Integer> repeats = PerSide.of(5, 4, 5, 6);
        assertThat(BORDER.stitches(3, repeats)).isEqualTo(PerSide.of(49, 29, 49, 39));
        assertThat(BORDER.allStitches(3, repeats)).isEqualTo(166);
        assertThat(BORDER.repeats(3, PerSide.of(49, 29, 49, 39))).contains(repeats);
    }

    @Test
    void a_border_comes_out_even_where_every_side_does() {
        assertThat(BORDER.closes(3, PerSide.pairs(49, 29))).isTrue();
        assertThat(BORDER.closes(3, PerSide.of(49, 29, 49, 49))).isTrue();
        assertThat(BORDER.closes(3, PerSide.of(49, 29, 29, 29))).isFalse();
        assertThat(BORDER.repeats(3, PerSide.of(49, 30, 49, 29))).isEmpty();
    }

    @Test
    void rounds_start_where_every_side_still_has_its_first_repeat() {
        assertThat(BORDER.lastStart()).isEqualTo(6);
        assertThat(BorderShape.of(LEVEL).lastStart()).isEqualTo(9);
    }

    @Test
    void the_sides_of_a_chart_are_alike() {
        Chart chart = Chart.blank("Reed Bank", LEVEL, 3, List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33"))));
        assertThat(chart.border()).isEqualTo(BorderShape.of(LEVEL));
        for (Side side : Side.values()) {
            assertThat(chart.shape(side)).isEqualTo(LEVEL);
            assertThat(chart.alike(side)).isEqualTo(Side.FIRST);
        }
    }
}
