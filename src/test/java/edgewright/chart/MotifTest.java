package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MotifTest {
    private static final Chart CHART = Sketches.chart("""
            3 A bbpb|lbbl|bbcbb
            2 B  bbp|bbbb|bbcb
            1 A   bp|bcbb|bbb
            """);

    @Test
    void it_goes_by_fabric_columns_and_holds_nothing_beyond_a_corner() {
        assertThat(Motif.of(CHART, Side.FIRST, 1, new SidePlace(1, 1), new SidePlace(3, 6))
                        .rounds())
                .containsExactly("bpbc", "bpbb", "pblb");
        assertThat(Motif.of(CHART, Side.FIRST, 1, new SidePlace(1, 1), new SidePlace(3, 1))
                        .rounds())
                .containsExactly("..b", ".bb", "bbp");
    }

    @Test
    void the_corners_may_be_given_in_any_order() {
        Motif motif = Motif.of(CHART, Side.FIRST, 2, new SidePlace(1, 2), new SidePlace(3, 10));
        assertThat(Motif.of(CHART, Side.FIRST, 2, new SidePlace(3, 10), new SidePlace(1, 2)))
                .isEqualTo(motif)
                .isEqualTo(Motif.of(CHART, Side.FIRST, 2, new SidePlace(1, 8), new SidePlace(3, 4)));
    }

    @Test
    void as_text_it_lies_as_on_the_chart_and_is_read_back() {
        Motif motif = new Motif(List.of(".bbb", "llbp"));
        assertThat(motif.text()).isEqualTo("llbp\n.bbb\n");
        assertThat(MotifText.of("\r\n  llbp \r\n\t.bbb\n\n").found()).contains(motif);
    }

    @Test
    void of_other_text_it_is_said_which_line_is_no_round_of_a_motif() {
        assertThat(Stream.of("", " \n", "llb\n\nbb", "pl\ndear friend", "bb,b", "lbB", "b+b\n+bb", "++", "b+\nbb")
                        .map(MotifText::of))
                .containsExactly(
                        new MotifText.Empty(),
                        new MotifText.Empty(),
                        new MotifText.OtherLength(3, 2, 3),
                        new MotifText.UnknownLetter(2, "d"),
                        new MotifText.UnknownLetter(1, ","),
                        new MotifText.UnknownLetter(1, "B"),
                        new MotifText.OtherCorner(2),
                        new MotifText.OtherCorner(1),
                        new MotifText.OtherCorner(2));
    }

    @Test
    void a_motif_without_stitches_or_with_uneven_rounds_is_refused() {
        for (List<String> rounds : List.of(List.<String>of(), List.of(""), List.of("bb", "b"), List.of("bx"))) {
            assertThatThrownBy(() -> new Motif(rounds)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void what_reaches_beyond_side_and_outermost_round_is_left_out() {
        Motif motif = new Motif(List.of("lll", "l.p", "ccc"));
        assertThat(motif.placed(CHART, MotifSpot.at(Side.FIRST, new SidePlace(2, 10)), 1))
                .isEqualTo(new Motif.Placed(
                        Map.of(
                                new Place(2, Section.TO_CORNER, 3), Stitch.LONG,
                                new Place(2, Section.TO_CORNER, 4), Stitch.LONG,
                                new Place(3, Section.TO_CORNER, 3), Stitch.LONG,
                                new Place(3, Section.TO_CORNER, 5), Stitch.PLAIN),
                        1,
                        1,
                        0));
    }

    @Test
    void wider_than_the_repeat_its_last_stitches_count() {
        assertThat(new Motif(List.of("plcbl")).placed(CHART, MotifSpot.at(Side.FIRST, new SidePlace(1, 3)), 2))
                .isEqualTo(new Motif.Placed(
                        Map.of(
                                new Place(1, Section.REPEAT, 1), Stitch.LONG,
                                new Place(1, Section.REPEAT, 2), Stitch.LONG,
                                new Place(1, Section.REPEAT, 3), Stitch.CHAIN,
                                new Place(1, Section.REPEAT, 4), Stitch.BACK_LOOP),
                        0,
                        0,
                        1));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void taken_up_and_put_back_it_changes_nothing_and_reversed_twice_neither(long seed) {
        RandomCharts charts = new RandomCharts(seed);
        for (int i = 0; i < 200; i++) {
            Chart chart = i % 5 == 0 ? charts.ragged() : charts.small();
            Random random = charts.random();
            int repeats = 1 + random.nextInt(3);
            SidePlace one = anywhere(chart, repeats, random);
            SidePlace other = anywhere(chart, repeats, random);
            Motif motif = Motif.of(chart, Side.FIRST, repeats, one, other);
            int column = Math.min(one.fabricColumn(), other.fabricColumn());
            int round = Math.min(one.round(), other.round());
            assertThat(motif.reversed().reversed()).isEqualTo(motif);
            assertThat(MotifText.of(motif.text()).found()).contains(motif);
            assertThat(Edits.setStitches(
                            chart,
                            motif.placed(chart, new MotifSpot(Side.FIRST, round, column), repeats)
                                    .stitches()))
                    .isEqualTo(chart);
        }
    }

    @Test
    void round_a_corner_it_keeps_its_distance_from_the_chains_on_both_sides() {
        Motif motif = Motif.roundCorner(CHART, Side.FIRST, 1, new Motif.RoundRun(1, 3), 6, 1);
        // Innermost first: the side ends in bbb, bbcb and bbcbb, the next one begins with bp, bbp and bbpb.
        assertThat(motif.rounds()).containsExactly("bbb..+..bp", "bbcb.+.bbp", "bbcbb+bbpb");
        assertThat(MotifText.of(motif.text()).found()).contains(motif);
        assertThat(motif.reversed().rounds()).containsExactly("pb..+..bbb", "pbb.+.bcbb", "bpbb+bbcbb");
    }

    @Test
    void round_a_corner_and_further_out_it_lies_along_the_diagonal() {
        Chart blank = Chart.blank("Reed Bank", new SideShape(1, 4, 2), 4, CHART.yarns());
        Motif motif = new Motif(List.of("l.+.p", "pl+pl"));
        // The last stitches of the side before the chains, the first ones after them.
        assertThat(motif.placed(blank, new MotifSpot(Side.FIRST, 3, 0), 2))
                .isEqualTo(new Motif.Placed(
                        Map.of(
                                new Place(3, Section.TO_CORNER, 5), Stitch.LONG,
                                new Place(3, Section.FROM_CORNER, 1), Stitch.PLAIN,
                                new Place(4, Section.TO_CORNER, 5), Stitch.PLAIN,
                                new Place(4, Section.TO_CORNER, 6), Stitch.LONG,
                                new Place(4, Section.FROM_CORNER, 1), Stitch.PLAIN,
                                new Place(4, Section.FROM_CORNER, 2), Stitch.LONG),
                        0,
                        0,
                        0));
    }

    @Test
    void rounds_that_grow_at_a_corner_are_not_flipped_in_and_out() {
        assertThat(new Motif(List.of("lb", "pp")).upsideDown()).isEqualTo(new Motif(List.of("pp", "lb")));
        assertThatThrownBy(() -> new Motif(List.of("l+l")).upsideDown()).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void repeated_along_the_side_it_begins_again_in_both_directions_and_tells_where_it_is_cut_off() {
        Chart blank = Chart.blank("Reed Bank", new SideShape(1, 4, 2), 2, CHART.yarns());
        MotifSpot spot = MotifSpot.at(Side.FIRST, new SidePlace(2, 4));
        Motif.Placed even = new Motif(List.of("lb")).repeated(blank, spot, 2);
        assertThat(Sketches.rounds(Edits.setStitches(blank, even.stitches()))).isEqualTo("""
                2 B blb|lblb|lblb
                1 A  bb|bbbb|bbb
                """);
        assertThat(even.stitchesOver()).isZero();
        assertThat(new Motif(List.of("lbb")).repeated(blank, spot, 2).stitchesOver())
                .isPositive();
    }

    private static SidePlace anywhere(Chart chart, int repeats, Random random) {
        int round = 1 + random.nextInt(chart.rounds().size());
        return new SidePlace(round, 1 + random.nextInt(chart.shape(Side.FIRST).stitches(round, repeats)));
    }
}
