package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.BorderShape;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class BackLayerTest {
    private static final SideShape SHAPE = new SideShape(2, 5, 1);

    @Test
    void a_back_layer_has_half_the_rounds_of_the_front_and_its_round_k_the_counts_of_front_round_2k() {
        // Source: common practice, no source.
        BackLayer back = new BackLayer(BorderShape.of(SHAPE), 8);

        assertThat(back.rounds())
                .containsExactly(
                        new BackLayer.Round(1, BackStitch.TALL, 2),
                        new BackLayer.Round(2, BackStitch.TALL, 4),
                        new BackLayer.Round(3, BackStitch.TALL, 6),
                        new BackLayer.Round(4, BackStitch.TALL, 8));
        assertThat(back.stitches(3, PerSide.all(10))).isEqualTo(PerSide.all(SHAPE.stitches(6, 10)));
        assertThat(back.matching(6)).isEqualTo(OptionalInt.of(3));
        assertThat(back.matching(5)).isEmpty();
    }

    @Test
    void a_front_with_an_odd_number_of_rounds_ends_with_one_low_round_in_the_back() {
        assertThat(new BackLayer(BorderShape.of(SHAPE), 5).rounds())
                .containsExactly(
                        new BackLayer.Round(1, BackStitch.TALL, 2),
                        new BackLayer.Round(2, BackStitch.TALL, 4),
                        new BackLayer.Round(3, BackStitch.SHORT, 5));
        assertThat(new BackLayer(BorderShape.of(SHAPE), 1).rounds())
                .containsExactly(new BackLayer.Round(1, BackStitch.SHORT, 1));
    }

    @Test
    void corners_of_two_stitches_at_each_arm_grow_as_published() {
        // Source: whole rounds of 28, 44, 60, 76, 92, 108, four stitches a side and round,
        // https://crochetbouquet.co.uk/pages/week-three-square-ten-solid-square
        int side = 7;
        List<Integer> rounds = new ArrayList<>(List.of(4 * side));
        for (int i = 0; i < 5; i++) {
            side += BackStitch.TALL.growth();
            rounds.add(4 * side);
        }
        assertThat(rounds).containsExactly(28, 44, 60, 76, 92, 108);
        // Source: 80 to 88 with one stitch at each arm,
        // https://crochetbouquet.co.uk/pages/week-five-square-eighteen-puff-stitch-corners
        assertThat(80 + 4 * BackStitch.SHORT.growth()).isEqualTo(88);
    }

    @Test
    void every_back_round_grown_by_its_corners_has_the_counts_of_its_front_round() {
        for (int frontRounds = 1; frontRounds <= 30; frontRounds++) {
            BackLayer back = new BackLayer(BorderShape.of(SHAPE), frontRounds);
            int stitches = SHAPE.stitches(0, 3);
            int height = 0;
            for (BackLayer.Round round : back.rounds()) {
                stitches += round.stitch().growth();
                height += round.stitch().frontRounds();
                assertThat(back.stitches(round.number(), PerSide.all(3))).isEqualTo(PerSide.all(stitches));
                assertThat(round.frontRound()).isEqualTo(height);
            }
            assertThat(height).isEqualTo(frontRounds);
            assertThat(back.joining(PerSide.all(3), 2)).isEqualTo(new BackLayer.Joining(PerSide.all(stitches), 2));
        }
    }

    @Test
    void the_joining_round_has_a_slip_stitch_for_every_stitch_and_corner_chain_and_no_more() {
        BackLayer.Joining joining = new BackLayer(BorderShape.of(SHAPE), 8).joining(PerSide.pairs(10, 8), 2);

        assertThat(joining.stitches()).isEqualTo(PerSide.pairs(69, 59));
        assertThat(joining.total()).isEqualTo(69 + 59 + 69 + 59 + 8);
    }

    @Test
    void a_piece_counted_in_a_back_round_is_fitted_as_in_the_front_round_that_it_matches() {
        Chart front = TestCharts.chart(SHAPE, 8, 5);
        BackLayer back = new BackLayer(BorderShape.of(SHAPE), 8);
        PerSide<Integer> counts = PerSide.of(62, 51, 61, 51);

        PerSide<Integer> repeats =
                back.repeats(8, PerSide.pairs(69, 59), Counting.STITCHES).orElseThrow();
        FitQuestion question = back.question(2, counts, Counting.STITCHES, repeats);

        assertThat(question)
                .isEqualTo(FitQuestion.of(4, counts, Counting.STITCHES).wanting(PerSide.pairs(61, 51)));
        assertThat(((FitPlan) Fit.answer(front, question)).targets().wanted()).isEqualTo(PerSide.pairs(61, 51));
        assertThat(back.question(0, counts, Counting.STITCHES, repeats).round()).isZero();
        assertThat(back.repeats(8, PerSide.of(69, 59, 69, 60), Counting.STITCHES))
                .isEmpty();
    }

    @Test
    void a_back_round_that_is_not_there_is_refused() {
        assertThatThrownBy(() -> new BackLayer(BorderShape.of(SHAPE), 5).round(4))
                .hasMessageContaining("expected 1 to 3");
        assertThatThrownBy(() -> new BackLayer(BorderShape.of(SHAPE), 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
