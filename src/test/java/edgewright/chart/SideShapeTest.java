package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SideShapeTest {
    private static final SideShape SHAPE = new SideShape(1, 8, 2);

    @Test
    void a_side_of_round_3_with_five_and_eight_repeats_has_49_and_73_stitches() {
        // Source: the project's own worked example, w = 8, A = 1, B = 2.
        assertThat(SHAPE.stitches(3, 5)).isEqualTo(49);
        assertThat(SHAPE.stitches(3, 8)).isEqualTo(73);
        assertThat(SHAPE.repeats(3, 73)).isEqualTo(OptionalInt.of(8));
    }

    @ParameterizedTest
    @CsvSource({"155, 1, 157", "103, 1, 105", "155, 2, 159", "103, 2, 107"})
    void a_two_chain_corner_makes_a_side_two_stitches_longer_every_round(int side, int rounds, int later) {
        // Source: published counts 155/103, 157/105, 159/107, https://issuhub.com/view/index/22092?pageIndex=63
        assertThat(grown(side, rounds)).isEqualTo(later);
    }

    @ParameterizedTest
    @CsvSource({"80, 88", "108, 116"})
    void a_whole_round_grows_by_eight_with_one_chain_corners(int round, int next) {
        // Sources: https://crochetbouquet.co.uk/pages/week-five-square-eighteen-puff-stitch-corners
        // and https://crochetbouquet.co.uk/pages/week-three-square-ten-solid-square
        assertThat(4 * grown(round / 4, 1)).isEqualTo(next);
    }

    @Test
    void sides_of_181_and_241_come_from_60_more_stitches_for_each_square_between() {
        // Source: 60 + 60n + 61 a side, https://blacksheepcrochet.com/wij-season-1-project-border-pattern/
        SideShape published = new SideShape(60, 60, 61);
        assertThat(published.stitches(0, 1)).isEqualTo(181);
        assertThat(published.stitches(0, 2)).isEqualTo(241);
        assertThat(published.stitches(1, 1)).isEqualTo(183);
    }

    @Test
    void seven_rounds_later_a_side_of_41_has_55() {
        // Source: common practice, no source
        assertThat(grown(41, 7)).isEqualTo(55);
    }

    @Test
    void a_count_with_one_chain_at_each_end_is_two_higher() {
        // Source: common practice, no source: a side of 39 stitches is called 41.
        assertThat(Counting.WITH_CHAINS.shown(39)).isEqualTo(41);
        assertThat(Counting.WITH_CHAINS.stitches(41)).isEqualTo(39);
        assertThat(Counting.STITCHES.shown(39)).isEqualTo(39);
    }

    @Test
    void a_side_closes_exactly_when_its_count_is_a_plus_b_plus_2r_plus_whole_repeats() {
        for (SideShape shape : shapes()) {
            for (int r = 0; r <= 4; r++) {
                for (int s = 0; s <= 40; s++) {
                    int stitches = s;
                    int round = r;
                    OptionalInt repeats = IntStream.rangeClosed(0, 40)
                            .filter(m -> shape.a() + shape.b() + 2 * round + m * shape.w() == stitches)
                            .findFirst();
                    assertThat(shape.repeats(r, s)).isEqualTo(repeats);
                    assertThat(shape.closes(r, s + shape.toAdd(r, s))).isTrue();
                    assertThat(shape.closes(r, s)).isEqualTo(shape.toAdd(r, s) == 0);
                    shape.toLose(r, s)
                            .ifPresent(lose -> assertThat(shape.closes(round, stitches - lose))
                                    .isTrue());
                    assertThat(shape.toLose(r, s).isPresent()).isEqualTo(s >= shape.fewestStitches(r));
                }
            }
        }
    }

    @Test
    void a_stitch_stands_in_its_fabric_column_and_a_long_stitch_lands_in_it_two_rounds_below() {
        for (SideShape shape : shapes()) {
            for (int repeats = 0; repeats <= 3; repeats++) {
                for (int r = 1; r <= 5; r++) {
                    for (int p = 1; p <= shape.stitches(r, repeats); p++) {
                        SidePlace stitch = new SidePlace(r, p);
                        assertThat(column(shape.footing(shape.placeOf(stitch, repeats))))
                                .isEqualTo(footingByColumn(shape, stitch, repeats));
                        assertThat(shape.landing(shape.placeOf(stitch, repeats), Stitch.LONG))
                                .isEqualTo(landingByColumn(shape, stitch, repeats));
                    }
                }
            }
        }
    }

    @Test
    void what_stands_above_a_stitch_stands_on_it() {
        for (SideShape shape : shapes()) {
            for (int r = 0; r <= 5; r++) {
                for (Section section : Section.values()) {
                    for (int i = 1; i <= shape.length(section, r); i++) {
                        Place place = new Place(r, section, i);
                        assertThat(shape.footing(shape.above(place))).isEqualTo(new Footing.OnStitch(place));
                    }
                }
            }
        }
    }

    @Test
    void a_place_in_the_chart_and_the_stitches_of_a_side_name_each_other() {
        for (SideShape shape : shapes()) {
            int repeats = 3;
            for (int r = 0; r <= 4; r++) {
                List<SidePlace> side = new ArrayList<>();
                for (Section section : Section.values()) {
                    int times = section == Section.REPEAT ? repeats : 1;
                    for (int occurrence = 1; occurrence <= times; occurrence++) {
                        for (int i = 1; i <= shape.length(section, r); i++) {
                            Place place = new Place(r, section, i);
                            SidePlace stitch = shape.sidePlaceOf(place, repeats, occurrence);
                            assertThat(shape.placeOf(stitch, repeats)).isEqualTo(place);
                            side.add(stitch);
                        }
                    }
                }
                int round = r;
                assertThat(side)
                        .isEqualTo(IntStream.rangeClosed(1, shape.stitches(r, repeats))
                                .mapToObj(p -> new SidePlace(round, p))
                                .toList());
            }
        }
    }

    @Test
    void a_stitch_past_the_end_of_a_side_is_refused() {
        assertThatThrownBy(() -> SHAPE.placeOf(new SidePlace(1, 6), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("5 stitches");
        assertThatThrownBy(() -> SHAPE.landing(new Place(3, Section.REPEAT, 9), Stitch.LONG))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SHAPE.footing(new Place(0, Section.REPEAT, 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The law in fabric columns, with no sections: c = p - r, and (r, c) stands on (r - 1, c). */
    private static String footingByColumn(SideShape shape, SidePlace stitch, int repeats) {
        int below = stitch.stitch() - 1;
        int last = shape.stitches(stitch.round() - 1, repeats);
        if (below == 0) {
            return "start";
        }
        return below > last
                ? "next"
                : shape.placeOf(new SidePlace(stitch.round() - 1, below), repeats)
                        .toString();
    }

    private static String column(Footing footing) {
        if (footing instanceof Footing.OnCornerChain chain) {
            return chain.corner() == CornerEnd.START ? "start" : "next";
        }
        return ((Footing.OnStitch) footing).place().toString();
    }

    private static Landing landingByColumn(SideShape shape, SidePlace stitch, int repeats) {
        int r = stitch.round();
        int p = stitch.stitch();
        int last = shape.stitches(r, repeats);
        if (r == 1) {
            return new Landing.NoRoundBelow();
        }
        if (p == 1 || p == last) {
            return new Landing.PastCorner(p == 1 ? CornerEnd.START : CornerEnd.NEXT);
        }
        if (p == 2 || p == last - 1) {
            return new Landing.InCornerChain(r - 2, p == 2 ? CornerEnd.START : CornerEnd.NEXT);
        }
        return new Landing.InStitch(shape.placeOf(new SidePlace(r - 2, p - 2), repeats));
    }

    private static int grown(int side, int rounds) {
        SideShape shape = new SideShape(0, 1, 0);
        return shape.stitches(rounds, shape.repeats(0, side).orElseThrow());
    }

    private static List<SideShape> shapes() {
        List<SideShape> shapes = new ArrayList<>();
        for (int a = 0; a <= 2; a++) {
            for (int b = 0; b <= 2; b++) {
                for (int w = 1; w <= 4; w++) {
                    shapes.add(new SideShape(a, w, b));
                }
            }
        }
        return shapes;
    }
}
