package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import edgewright.chart.Start;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StartsTest {
    /** Column 2 is the first of the repeat; it is long in rounds 3 and 5, and column 3 after it in round 5 too. */
    private static final Chart CHART = TestCharts.chart("""
            bbbbbb llbb bbbbbbb
            bbbbb  bbbb bbbbbb
            bbbb   lbbb bbbbb
            bbb    bbbb bbbb
            bb     bbbb bbb
            """);

    @Test
    void a_start_is_one_stitch_further_from_the_corner_in_every_round_and_steps_aside_where_it_is_long() {
        // Source: common practice, no source.
        assertThat(Starts.of(CHART, plan(2)))
                .containsExactly(
                        new RoundStart(1, Side.TOP, new SidePlace(1, 3), repeat(1, 1), 0, true),
                        new RoundStart(2, Side.BOTTOM, new SidePlace(2, 4), repeat(2, 1), 0, true),
                        new RoundStart(3, Side.TOP, new SidePlace(3, 6), repeat(3, 2), 1, true),
                        new RoundStart(4, Side.BOTTOM, new SidePlace(4, 6), repeat(4, 1), 0, true),
                        new RoundStart(5, Side.TOP, new SidePlace(5, 9), repeat(5, 3), 2, true));
    }

    @Test
    void a_start_may_stand_in_the_stitches_from_the_corner() {
        assertThat(Starts.of(CHART, plan(1)))
                .extracting(RoundStart::place)
                .containsExactly(
                        fromCorner(1, 2), fromCorner(2, 3), fromCorner(3, 4), fromCorner(4, 5), fromCorner(5, 6));
    }

    @Test
    void rounds_start_on_one_side_or_on_opposite_sides_in_turn() {
        Start always = Start.always(Side.LEFT).withColumn(OptionalInt.of(3));
        Start inTurn = Start.inTurn(Side.LEFT).withColumn(OptionalInt.of(3));

        assertThat(Starts.of(CHART, always)).extracting(RoundStart::side).containsOnly(Side.LEFT);
        assertThat(Starts.of(CHART, inTurn))
                .extracting(RoundStart::side)
                .containsExactly(Side.LEFT, Side.RIGHT, Side.LEFT, Side.RIGHT, Side.LEFT);
    }

    @Test
    void the_column_that_is_found_needs_the_fewest_moves_and_lies_near_the_middle_of_the_repeat() {
        // Columns 4 and 5 are never long; 4 is nearer to the middle of 2 to 5.
        assertThat(Starts.bestColumn(CHART)).isEqualTo(4);
        assertThat(Starts.of(CHART, Start.DEFAULT))
                .extracting(RoundStart::movedOn)
                .containsOnly(0);
    }

    @Test
    void a_start_steps_aside_for_a_chain_too() {
        Chart chart = TestCharts.chart("""
            bbb bcbb bbbb
            bb  bbbb bbb
            """);

        assertThat(Starts.of(chart, plan(3)))
                .extracting(RoundStart::number, RoundStart::movedOn)
                .containsExactly(tuple(4, 0), tuple(6, 1));
    }

    @Test
    void where_a_repeat_has_nothing_but_long_stitches_the_start_stays_and_says_so() {
        Chart chart = TestCharts.chart("""
            bbb llll bbbb
            bb  bbbb bbb
            """);

        assertThat(Starts.of(chart, plan(3)).get(1))
                .isEqualTo(new RoundStart(2, Side.BOTTOM, new SidePlace(2, 5), repeat(2, 2), 0, false));
    }

    @Test
    void a_side_without_a_repeat_starts_over_its_last_base_stitch_at_the_furthest() {
        // No repeat: the base round has 1 + 2 stitches, so column 4 is not there.
        assertThat(Starts.of(CHART, plan(4), PerSide.all(0)))
                .extracting(RoundStart::place)
                .startsWith(new Place(1, Section.TO_CORNER, 2), new Place(2, Section.TO_CORNER, 2));
    }

    @Test
    void a_column_past_the_first_repeat_is_refused() {
        assertThatThrownBy(() -> Starts.of(CHART, plan(6)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected 1 to 5");
        assertThatThrownBy(() -> plan(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void every_start_of_any_chart_is_the_first_free_stitch_from_its_column_on() {
        Random random = new Random(8);
        for (int i = 0; i < 2_000; i++) {
            SideShape shape = new SideShape(random.nextInt(4), 1 + random.nextInt(8), random.nextInt(4));
            Chart chart = TestCharts.random(random, shape, 6, random.nextDouble());
            int column = 1 + random.nextInt(shape.a() + shape.w());
            PerSide<Integer> repeats = PerSide.each(side -> 1 + random.nextInt(3));
            for (RoundStart start : Starts.of(chart, plan(column), repeats)) {
                String side = chart.round(start.round())
                        .side(start.side(), repeats.get(start.side()))
                        .letters();
                int inColumn = column + start.round();
                assertThat(start.number()).isEqualTo(inColumn + start.movedOn());
                assertThat(chart.stitch(start.place()).letter()).isEqualTo(side.charAt(start.number() - 1));
                assertThat(side.substring(inColumn - 1, start.number() - 1)).matches("l*");
                assertThat(start.free()).isEqualTo(side.charAt(start.number() - 1) != 'l');
                if (!start.free()) {
                    int end = Math.min(side.length(), inColumn + shape.w());
                    assertThat(side.substring(inColumn - 1, end)).matches("l+");
                }
            }
        }
    }

    @Test
    void no_other_column_needs_fewer_moves_and_none_that_needs_as_few_is_nearer_the_middle_of_the_repeat() {
        Random random = new Random(9);
        for (int i = 0; i < 300; i++) {
            SideShape shape = new SideShape(random.nextInt(4), 1 + random.nextInt(8), random.nextInt(4));
            Chart chart = TestCharts.random(random, shape, 8, i % 2 == 0 ? 0.4 : 0.1);
            int best = shape.a() + 1;
            for (int column = best + 1; column <= shape.a() + shape.w(); column++) {
                int fewer = moves(chart, best) - moves(chart, column);
                double nearer = fromMiddle(shape, best) - fromMiddle(shape, column);
                if (fewer > 0 || (fewer == 0 && nearer > 0)) {
                    best = column;
                }
            }
            assertThat(Starts.bestColumn(chart)).isEqualTo(best);
        }
    }

    private static double fromMiddle(SideShape shape, int column) {
        return Math.abs(column - (shape.a() + 1 + shape.a() + shape.w()) / 2.0);
    }

    private static int moves(Chart chart, int column) {
        return Starts.of(chart, plan(column)).stream()
                .mapToInt(start ->
                        start.free() ? start.movedOn() : chart.shape(Side.FIRST).w())
                .sum();
    }

    private static Start plan(int column) {
        return Start.DEFAULT.withColumn(OptionalInt.of(column));
    }

    private static Place repeat(int round, int place) {
        return new Place(round, Section.REPEAT, place);
    }

    private static Place fromCorner(int round, int place) {
        return new Place(round, Section.FROM_CORNER, place);
    }
}
