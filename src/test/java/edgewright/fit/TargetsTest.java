package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.BorderShape;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TargetsTest {
    private static final SideShape SHAPE = new SideShape(2, 6, 1);

    @Test
    void a_piece_that_closes_is_left_alone() {
        PerSide<Integer> counted = PerSide.pairs(39, 57);

        Targets targets = Targets.closest(BorderShape.of(SHAPE), 3, counted, Ties.OPPOSITE);

        assertThat(targets.wanted()).isEqualTo(counted);
        assertThat(targets.totalChange()).isZero();
        assertThat(targets.repeats()).isEqualTo(PerSide.pairs(5, 8));
    }

    @ParameterizedTest
    @CsvSource({"38, 39", "39, 39", "40, 39", "41, 39", "42, 45", "43, 45", "44, 45"})
    void a_side_goes_to_the_nearest_count_that_closes_and_adds_where_two_are_as_near(int counted, int wanted) {
        assertThat(Targets.closest(BorderShape.of(SHAPE), 3, PerSide.all(counted), Ties.OPPOSITE)
                        .wanted())
                .isEqualTo(PerSide.all(wanted));
    }

    @Test
    void opposite_sides_come_out_equal_unless_untied() {
        PerSide<Integer> counted = PerSide.of(39, 57, 45, 62);

        assertThat(Targets.closest(BorderShape.of(SHAPE), 3, counted, Ties.OPPOSITE)
                        .wanted())
                .isEqualTo(PerSide.pairs(45, 57));
        assertThat(Targets.closest(BorderShape.of(SHAPE), 3, counted, Ties.NONE).wanted())
                .isEqualTo(PerSide.of(39, 57, 45, 63));
        assertThat(Targets.closest(BorderShape.of(SHAPE), 3, counted, Ties.OPPOSITE.without(Side.BOTTOM))
                        .wanted())
                .isEqualTo(PerSide.of(39, 57, 45, 57));
    }

    @Test
    void the_next_sizes_are_one_repeat_more_and_one_less_if_there_is_one() {
        Targets targets = Targets.closest(BorderShape.of(SHAPE), 3, PerSide.pairs(9, 16), Ties.OPPOSITE);

        assertThat(targets.wanted()).isEqualTo(PerSide.pairs(9, 15));
        assertThat(targets.larger(Side.TOP)).isEqualTo(15);
        assertThat(targets.smaller(Side.TOP)).isEmpty();
        assertThat(targets.larger(Side.LEFT)).isEqualTo(21);
        assertThat(targets.smaller(Side.LEFT)).isEqualTo(OptionalInt.of(9));
    }

    @Test
    void counts_that_do_not_close_are_no_targets() {
        assertThatThrownBy(() -> new Targets(BorderShape.of(SHAPE), 3, PerSide.all(39), PerSide.all(40)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void no_other_counts_that_close_cost_less_and_none_at_the_same_cost_add_more() {
        Random random = new Random(4);
        for (int i = 0; i < 3_000; i++) {
            SideShape shape = new SideShape(random.nextInt(4), 1 + random.nextInt(9), random.nextInt(4));
            int round = random.nextInt(5);
            PerSide<Integer> counted = PerSide.each(side -> random.nextInt(40));
            Ties ties = new Ties(random.nextBoolean(), random.nextBoolean());

            assertThat(Targets.closest(BorderShape.of(shape), round, counted, ties)
                            .wanted())
                    .as(shape + ", round " + round + ", " + counted + ", " + ties)
                    .isEqualTo(bySearch(shape, round, counted, ties));
        }
    }

    @Test
    void a_constraint_solver_finds_the_same_targets() {
        Random random = new Random(44);
        for (int i = 0; i < 60; i++) {
            SideShape shape = new SideShape(random.nextInt(4), 2 + random.nextInt(15), random.nextInt(4));
            int round = random.nextInt(5);
            PerSide<Integer> counted = PerSide.each(side -> shape.fewestStitches(round) + random.nextInt(60));
            Ties ties = new Ties(random.nextBoolean(), random.nextBoolean());

            assertThat(Targets.closest(BorderShape.of(shape), round, counted, ties)
                            .wanted())
                    .as(shape + ", round " + round + ", " + counted + ", " + ties)
                    .isEqualTo(bySolver(shape, round, counted, ties));
        }
    }

    /** Every way to choose four counts, one pair of opposite sides after the other. */
    private static PerSide<Integer> bySearch(SideShape shape, int round, PerSide<Integer> counted, Ties ties) {
        List<Integer> closing = IntStream.rangeClosed(0, 70)
                .filter(s -> shape.closes(round, s))
                .boxed()
                .toList();
        List<PerSide<Integer>> all = new ArrayList<>();
        for (int one : closing) {
            for (int other : closing) {
                if (one == other || !ties.topAndBottom() || !ties.leftAndRight()) {
                    all.add(PerSide.of(one, one, other, other));
                }
            }
        }
        // The pairs are independent, so each is chosen among the ways in which the other does not matter.
        PerSide<Integer> level = best(all, counted, ties.topAndBottom(), Side.TOP, Side.BOTTOM);
        PerSide<Integer> upright = best(all, counted, ties.leftAndRight(), Side.LEFT, Side.RIGHT);
        return PerSide.of(level.top(), upright.left(), level.bottom(), upright.right());
    }

    private static PerSide<Integer> best(
            List<PerSide<Integer>> all, PerSide<Integer> counted, boolean tied, Side one, Side other) {
        return all.stream()
                .filter(way -> !tied || way.get(one).equals(way.get(other)))
                .min(Comparator.comparingInt((PerSide<Integer> way) -> Math.abs(way.get(one) - counted.get(one))
                                + Math.abs(way.get(other) - counted.get(other)))
                        .thenComparingInt(way -> -way.get(one) - way.get(other)))
                .orElseThrow();
    }

    /** The law put to a solver as it stands: S = A + B + 2R + m * w, least total change, then most stitches. */
    private static PerSide<Integer> bySolver(SideShape shape, int round, PerSide<Integer> counted, Ties ties) {
        Model model = new Model();
        int most = Collections.max(counted.stream().toList()) + 2 * shape.w();
        IntVar[] wanted = new IntVar[4];
        IntVar[] change = new IntVar[4];
        for (Side side : Side.values()) {
            int i = side.ordinal();
            IntVar repeats = model.intVar("m" + i, 0, most);
            wanted[i] = model.intVar("s" + i, 0, most);
            change[i] = model.intVar("d" + i, 0, most);
            model.scalar(
                            new IntVar[] {wanted[i], repeats},
                            new int[] {1, -shape.w()},
                            "=",
                            shape.a() + shape.b() + 2 * round)
                    .post();
            model.distance(wanted[i], model.intVar(counted.get(side)), "=", change[i])
                    .post();
        }
        tie(model, ties.topAndBottom(), wanted[0], wanted[2]);
        tie(model, ties.leftAndRight(), wanted[1], wanted[3]);
        // One number for both aims: a stitch of change weighs more than all stitches together.
        IntVar cost = model.intVar("cost", -4 * most, 4 * most * 5 * most);
        IntVar[] all = {change[0], change[1], change[2], change[3], wanted[0], wanted[1], wanted[2], wanted[3]};
        int weight = 4 * most + 1;
        model.scalar(all, new int[] {weight, weight, weight, weight, -1, -1, -1, -1}, "=", cost)
                .post();
        Solution best = model.getSolver().findOptimalSolution(cost, Model.MINIMIZE);
        return PerSide.each(side -> best.getIntVal(wanted[side.ordinal()]));
    }

    private static void tie(Model model, boolean tied, IntVar one, IntVar other) {
        if (tied) {
            model.arithm(one, "=", other).post();
        }
    }
}
