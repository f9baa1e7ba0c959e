package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.BorderShape;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PickUpTest {
    private static final Swatch BORDER = new Swatch(20, 22);

    @ParameterizedTest
    @CsvSource({
        // 1 stitch to a row, 2 to rows twice as high, 3 to rows three times as high:
        // http://carol-mycrochetpage.blogspot.com/2009/09/picot-edging.html
        "20, 1, 1",
        "10, 2, 1",
        "6.667, 3, 1",
        // 3 stitches for every 4 rows: https://issuhub.com/view/index/20231?pageIndex=65
        "26.667, 3, 4",
    })
    void published_ratios_come_from_the_rows_of_the_piece_and_the_stitches_of_the_border(
            double rowsIn10Cm, int stitches, int rows) {
        assertThat(Ratio.alongRows(rowsIn10Cm, BORDER)).isEqualTo(new Ratio(stitches, rows));
    }

    @Test
    void no_ratio_of_up_to_eight_rows_is_nearer() {
        for (int i = 20; i <= 400; i++) {
            double wanted = i / 100.0;
            Ratio nearest = Ratio.nearest(wanted);
            for (int rows = 1; rows <= 8; rows++) {
                for (int stitches = 1; stitches <= 40; stitches++) {
                    assertThat(Math.abs(nearest.stitchesARow() - wanted))
                            .isLessThanOrEqualTo(Math.abs((double) stitches / rows - wanted) + 1e-12);
                }
            }
        }
        assertThat(new Ratio(6, 8)).isEqualTo(new Ratio(3, 4));
        assertThatThrownBy(() -> new Ratio(0, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ratio.nearest(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void three_in_every_four_rows_miss_one_row_in_each_four() {
        RowSpread spread = new RowSpread(100, 75);

        assertThat(spread.exactly()).isEqualTo(Optional.of(new Ratio(3, 4)));
        for (int row = 4; row <= 100; row += 4) {
            assertThat(spread.upTo(row)).isEqualTo(row / 4 * 3);
        }
        assertThat(spread.runs().subList(0, 4))
                .containsExactly(
                        new RowSpread.Run(2, 1),
                        new RowSpread.Run(1, 0),
                        new RowSpread.Run(3, 1),
                        new RowSpread.Run(1, 0));
    }

    @Test
    void picked_up_stitches_are_spread_as_evenly_as_whole_stitches_can_be() {
        Random random = new Random(5);
        for (int i = 0; i < 2_000; i++) {
            RowSpread spread = new RowSpread(1 + random.nextInt(300), random.nextInt(600));
            int[] inRows =
                    IntStream.rangeClosed(1, spread.rows()).map(spread::inRow).toArray();
            assertThat(IntStream.of(inRows).sum()).isEqualTo(spread.stitches());
            assertThat(IntStream.of(inRows).max().orElseThrow()
                            - IntStream.of(inRows).min().orElseThrow())
                    .isLessThanOrEqualTo(1);
            for (int row = 1; row <= spread.rows(); row++) {
                assertThat(Math.abs(spread.upTo(row) - (double) row * spread.stitches() / spread.rows()))
                        .isLessThanOrEqualTo(0.5);
            }
            assertThat(spread.runs().stream()
                            .flatMapToInt(run ->
                                    IntStream.generate(run::stitchesInEach).limit(run.rows()))
                            .toArray())
                    .isEqualTo(inRows);
        }
    }

    @Test
    void a_side_of_150_is_quartered_into_37_or_38() {
        // Source: https://knotsewcute.blogspot.com/2013/12/simple-tip-when-adding-crochet-border.html?m=1
        PickUp pickUp = new PickUp(Side.TOP, new Edge.OfLength(750, BORDER), 150);

        List<PickUp.Mark> marks = pickUp.quarters();

        assertThat(marks)
                .containsExactly(
                        new PickUp.Mark(1, 188, 38),
                        new PickUp.Mark(2, 375, 75),
                        new PickUp.Mark(3, 563, 113),
                        new PickUp.Mark(4, 750, 150));
        assertThat(marks.get(2).stitches() - marks.get(1).stitches()).isEqualTo(38);
        assertThat(marks.get(3).stitches() - marks.get(2).stitches()).isEqualTo(37);
    }

    @Test
    void quarters_along_rows_are_marked_where_the_spread_has_come_to() {
        PickUp pickUp = new PickUp(Side.LEFT, new Edge.OfRows(103, new Ratio(3, 4)), 77);

        assertThat(pickUp.quarters()).allSatisfy(mark -> {
            assertThat(mark.stitches()).isEqualTo(pickUp.spread().orElseThrow().upTo(mark.along()));
            assertThat(Math.abs(mark.stitches() - mark.quarter() * 77 / 4.0)).isLessThanOrEqualTo(1);
            assertThat(Math.abs(mark.along() - mark.quarter() * 103 / 4.0)).isLessThanOrEqualTo(0.5);
        });
    }

    @Test
    void a_bare_piece_gets_the_number_that_closes_nearest_to_what_lies_flat() {
        // 1.20 m at 20 stitches in 10 cm are 240; 198 rows at 3 in 4 are 148.5. A multiple of 6 plus 5 closes.
        Edge top = new Edge.OfLength(1200, BORDER);
        Edge left = new Edge.OfRows(198, new Ratio(3, 4));

        PickUpPlan plan = (PickUpPlan)
                PickUpPlan.of(BorderShape.of(new SideShape(2, 6, 3)), PerSide.pairs(top, left), Ties.OPPOSITE);

        assertThat(plan.targets().counted()).isEqualTo(PerSide.pairs(240, 149));
        assertThat(plan.targets().wanted()).isEqualTo(PerSide.pairs(239, 149));
        assertThat(plan.on(Side.BOTTOM)).isEqualTo(new PickUp(Side.BOTTOM, top, 239));
        assertThat(plan.on(Side.LEFT).spread()).isEqualTo(Optional.of(new RowSpread(198, 149)));
        assertThat(plan.on(Side.BOTTOM).spread()).isEmpty();
    }

    @Test
    void an_edge_of_stitches_has_one_in_each_but_for_the_few_that_make_it_close() {
        PerSide<Edge> edges = PerSide.pairs(new Edge.OfStitches(120), new Edge.OfStitches(125));

        PickUpPlan plan = (PickUpPlan) PickUpPlan.of(BorderShape.of(new SideShape(2, 6, 3)), edges, Ties.OPPOSITE);

        assertThat(plan.targets().wanted()).isEqualTo(PerSide.pairs(119, 125));
        assertThat(plan.on(Side.TOP).spread().orElseThrow().runs())
                .containsExactly(new RowSpread.Run(60, 1), new RowSpread.Run(1, 0), new RowSpread.Run(59, 1));
        assertThat(plan.on(Side.LEFT).spread().orElseThrow().exactly()).isEqualTo(Optional.of(new Ratio(1, 1)));
    }

    @Test
    void an_edge_too_short_for_the_corners_is_refused() {
        PerSide<Edge> edges = PerSide.pairs(new Edge.OfStitches(120), new Edge.OfStitches(4));

        assertThat(PickUpPlan.of(BorderShape.of(new SideShape(2, 6, 3)), edges, Ties.OPPOSITE))
                .isEqualTo(new FitRefusal.TooSmall(
                        FitQuestion.of(0, PerSide.pairs(120, 4), Counting.STITCHES),
                        5,
                        List.of(Side.LEFT, Side.RIGHT)));
    }
}
