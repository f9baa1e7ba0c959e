package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.SideShape;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ChangeRoundsTest {

    @Test
    void the_last_plain_rounds_before_the_first_long_stitch_are_for_counting_changing_and_checking() {
        // Source: common practice, no source: count in one round, change in the next, count again.
        assertThat(ChangeRounds.of(TestCharts.chart(new SideShape(2, 5, 1), 8, 5)))
                .isEqualTo(new ChangeRounds(OptionalInt.of(5), OptionalInt.of(2), 3, OptionalInt.of(4)));
    }

    @Test
    void the_base_round_may_be_the_counting_round() {
        assertThat(ChangeRounds.of(TestCharts.chart(new SideShape(2, 5, 1), 8, 3)))
                .isEqualTo(new ChangeRounds(OptionalInt.of(3), OptionalInt.of(0), 1, OptionalInt.of(2)));
    }

    @Test
    void a_design_with_long_stitches_from_round_2_must_have_its_counts_right_in_the_base_round() {
        assertThat(ChangeRounds.of(TestCharts.chart(new SideShape(2, 5, 1), 8, 2)))
                .isEqualTo(new ChangeRounds(OptionalInt.of(2), OptionalInt.empty(), 0, OptionalInt.of(1)));
        // Round 1 cannot have long stitches; a chart that has them all the same is answered too.
        assertThat(ChangeRounds.of(TestCharts.chart(new SideShape(2, 5, 1), 8, 1)))
                .isEqualTo(new ChangeRounds(OptionalInt.of(1), OptionalInt.empty(), 0, OptionalInt.empty()));
    }

    @Test
    void a_round_with_chains_is_part_of_the_design_and_is_not_changed() {
        assertThat(ChangeRounds.of(TestCharts.chart("""
                bbbbbbb lbbbb bbbbbb
                bbbbbb  bbbbb bbbbb
                bbbbb   bbcbb bbbb
                bbbb    bbbbb bbb
                bbb     bbbbb bb
                """)))
                .isEqualTo(new ChangeRounds(OptionalInt.of(5), OptionalInt.of(1), 2, OptionalInt.empty()));
    }

    @Test
    void a_chart_without_long_stitches_is_put_right_in_its_last_rounds() {
        assertThat(ChangeRounds.of(TestCharts.chart(new SideShape(2, 5, 1), 5, 99)))
                .isEqualTo(new ChangeRounds(OptionalInt.empty(), OptionalInt.of(3), 4, OptionalInt.of(5)));
    }
}
