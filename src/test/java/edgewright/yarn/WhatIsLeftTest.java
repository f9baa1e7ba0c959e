package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.testing.RandomCharts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;

class WhatIsLeftTest {
    private static final Yarn PEAT = new Yarn("A", "Peat", Colour.parse("#2b2a33"));
    private static final Yarn CHALK = new Yarn("B", "Chalk", Colour.parse("#f2ead8"));
    private static final Yarn FOG = new Yarn("C", "Fog", Colour.parse("#e4dccb"));
    private static final PerSide<Integer> SIZE = PerSide.all(2);

    /** Six striped rounds in turn: nothing is dropped, so each round may go its own way. */
    private static final Chart STRIPES = Chart.blank("Stripes", new SideShape(1, 4, 1), 6, List.of(PEAT, CHALK, FOG))
            .withRounds(List.of(
                    Round.of("A", "bb", "bbbb", "bb"),
                    Round.of("B", "bbb", "bbbb", "bbb"),
                    Round.of("A", "bbbb", "bbbb", "bbbb"),
                    Round.of("B", "bbbbb", "bbbb", "bbbbb"),
                    Round.of("A", "bbbbbb", "bbbb", "bbbbbb"),
                    Round.of("B", "bbbbbbb", "bbbb", "bbbbbbb")));

    @Test
    void where_nobody_said_what_is_at_hand_there_is_no_answer() {
        assertThat(WhatIsLeft.of(STRIPES, SIZE)).isInstanceOf(WhatIsLeft.Unknown.class);
    }

    @Test
    void enough_is_enough_and_a_yarn_of_which_nobody_spoke_can_be_had() {
        double needed = Amounts.of(STRIPES, SIZE).yarns().get(0).metres();
        assertThat(WhatIsLeft.of(withHand(STRIPES, needed, Double.NaN, Double.NaN), SIZE))
                .isInstanceOf(WhatIsLeft.Enough.class);
        assertThat(WhatIsLeft.of(withHand(STRIPES, needed - 0.01, Double.NaN, 0), SIZE))
                .isInstanceOf(WhatIsLeft.NotEnough.class);
    }

    @Test
    void the_round_that_relieves_the_yarn_goes_to_another_that_is_told_apart_from_its_neighbours() {
        // Fog cannot lie beside Chalk's place in the order unless it is told apart from Peat, which it is.
        Amounts amounts = Amounts.of(STRIPES, SIZE);
        double chalk = amounts.yarns().get(1).metres();
        Chart chart = withHand(STRIPES, Double.NaN, chalk - 0.5, 100);
        WhatIsLeft.OtherYarns answer = (WhatIsLeft.OtherYarns) WhatIsLeft.of(chart, SIZE);
        assertThat(answer.proved()).isTrue();
        // The largest of Chalk's rounds leaves most Chalk.
        assertThat(answer.changed(chart)).containsExactly(6);
        assertThat(answer.applyTo(chart).round(6).yarn()).isEqualTo("C");
        assertThat(WhatIsLeft.of(answer.applyTo(chart), SIZE)).isInstanceOf(WhatIsLeft.Enough.class);
    }

    @Test
    void rounds_that_long_stitches_join_go_to_another_yarn_together() {
        Chart joined = STRIPES.withRound(4, Round.of("B", "bbbbb", "lbbb", "bbbbb"));
        assertThat(YarnSwap.of(joined))
                .containsExactly(
                        new YarnSwap(List.of(1), PEAT, List.of()),
                        new YarnSwap(List.of(2, 4), CHALK, List.of(FOG)),
                        new YarnSwap(List.of(3), PEAT, List.of()),
                        new YarnSwap(List.of(5), PEAT, List.of()),
                        new YarnSwap(List.of(6), CHALK, List.of(FOG)));
    }

    @Test
    void neighbours_of_one_yarn_stay_one_band() {
        Chart band = STRIPES.withRound(2, STRIPES.round(2).withYarn("A"));
        assertThat(YarnSwap.of(band).get(0).rounds()).containsExactly(1, 2, 3);
    }

    @Test
    void a_search_that_was_ended_early_does_not_call_its_answer_proved() {
        Chart chart = withHand(STRIPES, 1000, 10, 1000);
        Amounts amounts = Amounts.of(chart, SIZE);
        assertThat(YarnSearch.of(chart, amounts, 1)).isInstanceOf(WhatIsLeft.Undecided.class);
        for (long steps = 2; steps < 60; steps++) {
            WhatIsLeft answer = YarnSearch.of(chart, amounts, steps);
            if (answer instanceof WhatIsLeft.OtherYarns found && !found.proved()) {
                return;
            }
        }
        throw new AssertionError("every search was through or found nothing");
    }

    @Test
    void a_search_that_is_no_longer_wanted_ends_at_once() {
        // Hardly enough of all yarns together: millions of ways leave a little too little of one.
        List<Yarn> yarns = List.of(PEAT, CHALK, new Yarn("C", "Rust", Colour.parse("#c03030")));
        Chart bare = Chart.blank("Long", new SideShape(1, 4, 1), 60, yarns);
        double metres = Amounts.of(bare, SIZE).rounds().stream()
                        .mapToDouble(Amounts.OfRound::metres)
                        .sum()
                * (1 + Amounts.MARGIN);
        Chart chart = bare.withYarns(yarns.stream()
                .map(yarn -> yarn.withMetresInHand(OptionalDouble.of(1.0001 * metres / yarns.size())))
                .toList());
        AtomicInteger asked = new AtomicInteger();
        assertThatThrownBy(() -> WhatIsLeft.of(chart, SIZE, () -> asked.incrementAndGet() == 5))
                .isInstanceOf(CancellationException.class);
        assertThat(asked.get()).isEqualTo(5);
    }

    /** The judge tries every yarn for every round, and goes by the sentences of the law and not by groups. */
    @Test
    void the_answer_is_that_of_trying_everything() {
        Map<String, Integer> answers = new TreeMap<>();
        for (long seed = 0; seed < 3_000; seed++) {
            RandomCharts charts = new RandomCharts(seed);
            Chart chart = charts.small();
            chart = stocked(chart, charts.random());
            WhatIsLeft answer = WhatIsLeft.of(chart, SIZE);
            answers.merge(answer.getClass().getSimpleName(), 1, Integer::sum);
            Tried tried = new Tried(chart);
            if (answer instanceof WhatIsLeft.OtherYarns found) {
                assertThat(found.proved()).isTrue();
                assertThat(tried.isAllowed(found.yarns())).as("seed %d", seed).isTrue();
                assertThat(tried.left(found.yarns())).as("seed %d", seed).isGreaterThan(-1e-7);
                assertThat(found.changed(chart)).as("seed %d", seed).hasSize(tried.fewest);
                assertThat(tried.left(found.yarns())).as("seed %d", seed).isCloseTo(tried.mostLeft, within(1e-9));
            } else if (answer instanceof WhatIsLeft.NotEnough) {
                assertThat(tried.fewest).as("seed %d", seed).isEqualTo(Integer.MAX_VALUE);
            } else if (answer instanceof WhatIsLeft.Enough) {
                assertThat(tried.fewest).as("seed %d", seed).isZero();
            }
        }
        // Each answer came up often enough to mean something.
        assertThat(answers.keySet()).containsExactly("Enough", "NotEnough", "OtherYarns", "Unknown");
        assertThat(answers.values()).allMatch(times -> times > 50, answers.toString());
    }

    /** A second judge for charts that are too large to try everything: https://choco-solver.org */
    @Test
    void a_constraint_solver_changes_no_fewer_rounds() {
        int proved = 0;
        int refused = 0;
        for (long seed = 0; seed < 25; seed++) {
            RandomCharts charts = new RandomCharts(seed);
            Chart chart = striped(charts, 14);
            chart = stocked(chart, charts.random());
            WhatIsLeft answer = WhatIsLeft.of(chart, SIZE);
            int solved = solve(chart);
            if (answer instanceof WhatIsLeft.OtherYarns found && found.proved()) {
                assertThat(found.changed(chart)).as("seed %d", seed).hasSize(solved);
                proved++;
            } else if (answer instanceof WhatIsLeft.NotEnough) {
                assertThat(solved).as("seed %d", seed).isEqualTo(-1);
                refused++;
            }
        }
        assertThat(List.of(proved, refused)).allMatch(times -> times > 2, proved + " proved, " + refused + " refused");
    }

    /** The fewest rounds that change, or -1 if there is no way. Lengths are in whole micrometres, rounded up. */
    private static int solve(Chart chart) {
        Tried law = new Tried(chart, false);
        int n = chart.rounds().size();
        int k = chart.yarns().size();
        Model model = new Model();
        IntVar[] yarns = model.intVarArray(n, 0, k - 1);
        for (int r = 2; r <= n; r++) {
            Tuples allowed = new Tuples(true);
            for (int one = 0; one < k; one++) {
                for (int two = 0; two < k; two++) {
                    if (law.mayBeNeighbours(
                            r,
                            chart.yarns().get(one).id(),
                            chart.yarns().get(two).id())) {
                        allowed.add(one, two);
                    }
                }
            }
            if (allowed.nbTuples() == 0) {
                return -1;
            }
            model.table(yarns[r - 2], yarns[r - 1], allowed).post();
            if (law.isJoined(r)) {
                model.arithm(yarns[r - 1], "=", yarns[r - 3]).post();
            }
        }
        BoolVar[] changed = new BoolVar[n];
        for (int r = 1; r <= n; r++) {
            changed[r - 1] = model.arithm(yarns[r - 1], "!=", chart.yarns().indexOf(chart.yarnOf(r)))
                    .reify();
        }
        for (int yarn = 0; yarn < k; yarn++) {
            OptionalDouble inHand = chart.yarns().get(yarn).metresInHand();
            if (inHand.isPresent()) {
                BoolVar[] uses = new BoolVar[n];
                int[] lengths = new int[n];
                for (int r = 1; r <= n; r++) {
                    uses[r - 1] = model.arithm(yarns[r - 1], "=", yarn).reify();
                    lengths[r - 1] = (int) Math.round(law.metres(r) * 1e5);
                }
                model.scalar(uses, lengths, "<=", (int) Math.round(inHand.getAsDouble() * 1e5))
                        .post();
            }
        }
        IntVar sum = model.intVar(0, n);
        model.sum(changed, "=", sum).post();
        var best = model.getSolver().findOptimalSolution(sum, Model.MINIMIZE);
        return best == null ? -1 : best.getIntVal(sum);
    }

    private static Chart striped(RandomCharts charts, int rounds) {
        Chart chart = charts.chart(new SideShape(2, 3, 1), rounds);
        List<Round> bare = new ArrayList<>();
        for (int r = 1; r <= rounds; r++) {
            boolean drops = charts.random().nextInt(4) == 0;
            bare.add(new Round(
                    chart.round(r).yarn(),
                    chart.round(r).fromCorner(),
                    drops
                            ? chart.round(r).repeat()
                            : Round.of("A", "b", "bbb", "b").repeat(),
                    chart.round(r).toCorner()));
        }
        List<Round> plain = bare.stream()
                .map(round -> charts.random().nextInt(3) == 0
                        ? round
                        : Round.of(
                                round.yarn(),
                                round.fromCorner().letters().replace('l', 'b'),
                                round.repeat().letters().replace('l', 'b'),
                                round.toCorner().letters().replace('l', 'b')))
                .toList();
        return chart.withRounds(plain);
    }

    /** Some of each yarn at hand: none, about enough, plenty, or not said. */
    private static Chart stocked(Chart chart, Random random) {
        Amounts amounts = Amounts.of(chart, SIZE);
        double all = amounts.metres();
        return chart.withYarns(chart.yarns().stream()
                .map(yarn -> switch (random.nextInt(4)) {
                    case 0 -> yarn;
                    case 1 -> yarn.withMetresInHand(OptionalDouble.of(all));
                    default ->
                        yarn.withMetresInHand(
                                OptionalDouble.of(Math.round(random.nextDouble() * all * 0.7 * 1e5) / 1e5));
                })
                .toList());
    }

    private static Chart withHand(Chart chart, double... metres) {
        List<Yarn> yarns = new ArrayList<>();
        for (int i = 0; i < metres.length; i++) {
            yarns.add(chart.yarns()
                    .get(i)
                    .withMetresInHand(Double.isNaN(metres[i]) ? OptionalDouble.empty() : OptionalDouble.of(metres[i])));
        }
        return chart.withYarns(yarns);
    }

    /** Tries everything. */
    private static final class Tried {
        private final Chart chart;
        private final Amounts amounts;
        private int fewest = Integer.MAX_VALUE;
        private double mostLeft = Double.NEGATIVE_INFINITY;

        Tried(Chart chart) {
            this(chart, true);
        }

        Tried(Chart chart, boolean everything) {
            this.chart = chart;
            this.amounts = Amounts.of(chart, SIZE);
            if (everything) {
                tryFrom(new ArrayList<>());
            }
        }

        private void tryFrom(List<String> ids) {
            if (ids.size() == chart.rounds().size()) {
                double left = left(ids);
                if (left < -1e-7 || !isAllowed(ids)) {
                    return;
                }
                int changed = 0;
                for (int r = 1; r <= ids.size(); r++) {
                    changed += chart.round(r).yarn().equals(ids.get(r - 1)) ? 0 : 1;
                }
                if (changed < fewest || (changed == fewest && left > mostLeft)) {
                    fewest = changed;
                    mostLeft = left;
                }
                return;
            }
            for (Yarn yarn : chart.yarns()) {
                ids.add(yarn.id());
                tryFrom(ids);
                ids.remove(ids.size() - 1);
            }
        }

        /** The least that is left of any yarn; below 0 if there is not enough. */
        double left(List<String> ids) {
            double least = Double.POSITIVE_INFINITY;
            for (Yarn yarn : chart.yarns()) {
                double metres = yarn.metresInHand().orElse(Double.POSITIVE_INFINITY);
                for (int r = 1; r <= ids.size(); r++) {
                    metres -= ids.get(r - 1).equals(yarn.id()) ? metres(r) : 0;
                }
                least = Math.min(least, metres);
            }
            return least;
        }

        double metres(int round) {
            return amounts.rounds().get(round - 1).metres() * 1.1;
        }

        boolean isAllowed(List<String> ids) {
            for (int r = 2; r <= ids.size(); r++) {
                if (!mayBeNeighbours(r, ids.get(r - 2), ids.get(r - 1))
                        || (isJoined(r) && !ids.get(r - 1).equals(ids.get(r - 3)))) {
                    return false;
                }
            }
            return true;
        }

        /** Whether this round, with long stitches, lands on a round of its own yarn. */
        boolean isJoined(int round) {
            return round >= 3
                    && chart.yarnOf(round).equals(chart.yarnOf(round - 2))
                    && chart.round(round).side(Side.FIRST, 1).letters().contains("l");
        }

        /** Whether these two yarns may be those of the round below and of this one. */
        boolean mayBeNeighbours(int round, String below, String own) {
            if (chart.yarnOf(round).equals(chart.yarnOf(round - 1))) {
                return below.equals(own);
            }
            return !below.equals(own) && (isClear(below, own) || meetInChart(below, own));
        }

        private boolean isClear(String one, String two) {
            return !Contrast.between(
                            chart.yarn(one).orElseThrow().colour(),
                            chart.yarn(two).orElseThrow().colour())
                    .isLow();
        }

        private boolean meetInChart(String one, String two) {
            for (int r = 2; r <= chart.rounds().size(); r++) {
                List<String> pair =
                        List.of(chart.round(r).yarn(), chart.round(r - 1).yarn());
                if (pair.equals(List.of(one, two)) || pair.equals(List.of(two, one))) {
                    return true;
                }
            }
            return false;
        }
    }
}
