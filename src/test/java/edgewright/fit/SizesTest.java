package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.BorderShape;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SizesTest {

    @Test
    void a_side_of_41_has_55_seven_rounds_later_and_every_count_says_whether_chains_are_in_it() {
        // Source: common practice, no source; a side of 39 stitches is called 41.
        SideShape shape = new SideShape(3, 6, 6);

        CountTable stitches = CountTable.of(BorderShape.of(shape), 7, PerSide.all(5), Counting.STITCHES);
        CountTable chains = CountTable.of(BorderShape.of(shape), 7, PerSide.all(5), Counting.WITH_CHAINS);

        assertThat(tops(stitches)).containsExactly(39, 41, 43, 45, 47, 49, 51, 53);
        assertThat(tops(chains)).containsExactly(41, 43, 45, 47, 49, 51, 53, 55);
        assertThat(chains.counting()).isEqualTo(Counting.WITH_CHAINS);
    }

    @Test
    void the_published_rounds_of_155_and_103_stitches_grow_by_two() {
        // Source: 155/103, 157/105, 159/107 in rounds 1 to 3, https://issuhub.com/view/index/22092?pageIndex=63
        CountTable table =
                CountTable.of(BorderShape.of(new SideShape(0, 1, 0)), 3, PerSide.pairs(153, 101), Counting.STITCHES);

        assertThat(table.rows().subList(1, 4))
                .containsExactly(
                        new CountTable.Row(1, PerSide.pairs(155, 103)),
                        new CountTable.Row(2, PerSide.pairs(157, 105)),
                        new CountTable.Row(3, PerSide.pairs(159, 107)));
    }

    @Test
    void a_table_of_sizes_has_a_row_for_each_number_of_repeats() {
        SideShape shape = new SideShape(2, 5, 1);

        assertThat(SizeTable.of(shape, List.of(0, 3), 5, 8, Counting.STITCHES))
                .isEqualTo(new SizeTable(
                        Counting.STITCHES,
                        List.of(0, 3),
                        List.of(
                                new SizeTable.Row(5, List.of(28, 34)),
                                new SizeTable.Row(6, List.of(33, 39)),
                                new SizeTable.Row(7, List.of(38, 44)),
                                new SizeTable.Row(8, List.of(43, 49)))));
        assertThat(SizeTable.of(shape, List.of(3), 0, 0, Counting.WITH_CHAINS).rows())
                .containsExactly(new SizeTable.Row(0, List.of(11)));
    }

    @Test
    void a_side_closes_on_a_multiple_of_the_repeat_plus_what_the_corners_leave() {
        // Round 3 of A = 1, w = 8, B = 2: multiple of 8 plus 1 (49, 73); with chains plus 3 (51, 75).
        // Source: the project's own worked example.
        SideShape shape = new SideShape(1, 8, 2);
        assertThat(SideMultiple.of(shape, 3, Counting.STITCHES))
                .isEqualTo(new SideMultiple(8, 1, 9, Counting.STITCHES));
        assertThat(SideMultiple.of(shape, 3, Counting.WITH_CHAINS))
                .isEqualTo(new SideMultiple(8, 3, 11, Counting.WITH_CHAINS));
        // Source: 'multiple of 3 plus 2 on each side' in a base round,
        // https://www.yarntalecollective.com/crochet/sideways-puff-stitch-single-crochet-borderedging-patterntutorial/
        SideMultiple three = SideMultiple.of(new SideShape(1, 3, 1), 0, Counting.STITCHES);
        assertThat(three.of() + " plus " + three.plus()).isEqualTo("3 plus 2");
        assertThat(IntStream.rangeClosed(0, 12).filter(three::has)).containsExactly(2, 5, 8, 11);
        // Source: 'multiple of 4 plus 1' along an edge,
        // http://www.pressreader.com/australia/simply-crochet/20170622/283012579888609
        SideMultiple four = SideMultiple.of(new SideShape(0, 4, 1), 0, Counting.STITCHES);
        assertThat(four.of() + " plus " + four.plus()).isEqualTo("4 plus 1");
    }

    @Test
    void a_swatch_tells_the_width_of_the_border_and_the_size_of_the_whole() {
        // By hand: 20 stitches and 25 rounds in 10 cm are 5 mm and 4 mm each. 100 + 8 = 20 rounds of 4 mm are 80 mm a
        // side.
        Swatch swatch = new Swatch(20, 25);

        FinishedSize size = FinishedSize.onStitches(PerSide.of(200, 240, 202, 240), 20, swatch);

        assertThat(size.acrossMm()).isCloseTo(1005, within(1e-9));
        assertThat(size.downMm()).isCloseTo(1200, within(1e-9));
        assertThat(size.borderMm()).isCloseTo(80, within(1e-9));
        assertThat(size.outerAcrossMm()).isCloseTo(1165, within(1e-9));
        assertThat(size.outerDownMm()).isCloseTo(1360, within(1e-9));
    }

    @Test
    void an_edge_has_length_to_spare_where_stitches_are_wider_than_rounds_are_high() {
        // 20 rounds add 40 stitches of 5 mm to a side, and 40 rounds of 4 mm to its place.
        assertThat(FinishedSize.around(1000, 1200, 20, new Swatch(20, 25)).edgeToSpareMm())
                .isCloseTo(40, within(1e-9));
        assertThat(FinishedSize.around(1000, 1200, 20, new Swatch(20, 20)).edgeToSpareMm())
                .isCloseTo(0, within(1e-9));
        assertThat(FinishedSize.around(1000, 1200, 20, new Swatch(25, 20)).edgeToSpareMm())
                .isCloseTo(-40, within(1e-9));
    }

    @Test
    void what_cannot_be_measured_is_refused() {
        assertThatThrownBy(() -> new Swatch(0, 20)).hasMessageContaining("stitches in 10 cm");
        assertThatThrownBy(() -> new Swatch(20, Double.NaN)).hasMessageContaining("rounds in 10 cm");
        assertThatThrownBy(() -> new Swatch(20, Double.POSITIVE_INFINITY)).hasMessageContaining("rounds in 10 cm");
        assertThatThrownBy(() -> FinishedSize.around(-1, 10, 3, new Swatch(20, 20)))
                .hasMessageContaining("across");
    }

    private static List<Integer> tops(CountTable table) {
        return table.rows().stream().map(row -> row.counts().top()).toList();
    }
}
