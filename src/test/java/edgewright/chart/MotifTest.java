package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.List;
import java.util.Map;
import java.util.Random;
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
        assertThat(Motif.parse("\r\n  llbp \r\n\t.bbb\n\n")).contains(motif);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n", "llb\nbb", "dear friend", "bb,b", "lbB"})
    void other_text_is_no_motif(String text) {
        assertThat(Motif.parse(text)).isEmpty();
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
        assertThat(motif.placed(CHART, Side.FIRST, 1, new SidePlace(2, 10)))
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
        assertThat(new Motif(List.of("plcbl")).placed(CHART, Side.FIRST, 2, new SidePlace(1, 3)))
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
            assertThat(Motif.parse(motif.text())).contains(motif);
            if (column + round >= 1) {
                SidePlace first = new SidePlace(round, column + round);
                assertThat(Edits.setStitches(
                                chart,
                                motif.placed(chart, Side.FIRST, repeats, first).stitches()))
                        .isEqualTo(chart);
            }
        }
    }

    private static SidePlace anywhere(Chart chart, int repeats, Random random) {
        int round = 1 + random.nextInt(chart.rounds().size());
        return new SidePlace(round, 1 + random.nextInt(chart.shape(Side.FIRST).stitches(round, repeats)));
    }
}
