package edgewright.yarn;

import static edgewright.yarn.YarnStitch.BACK_LOOP;
import static edgewright.yarn.YarnStitch.CHAIN;
import static edgewright.yarn.YarnStitch.LONG;
import static edgewright.yarn.YarnStitch.PLAIN;
import static edgewright.yarn.YarnStitch.SLIP;
import static edgewright.yarn.YarnStitch.TALL;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.chart.Back;
import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.chart.YarnUse;
import edgewright.testing.RandomCharts;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AmountsTest {
    private static final double CM_IN_INCH = 2.54;
    private static final double CM_IN_YARD = 91.44;
    private static final Yarn PEAT = new Yarn("A", "Peat", Colour.parse("#2b2a33"));
    private static final Yarn CHALK = new Yarn("B", "Chalk", Colour.parse("#f2ead8"));

    /** Round 1 Peat: 4 a side and 3 a repeat; round 3 has long stitches and a chain. */
    private static final Chart BANKS = chart(
            Round.of("A", "bb", "bbb", "bb"), Round.of("B", "bbb", "bpb", "bbb"), Round.of("A", "bblb", "lcb", "bblb"));

    private static final YarnUse MEASURED = use(112, 115, 200, 60, 220, 40);

    @Test
    void stitches_are_counted_by_kind_with_the_chains_of_the_corners() {
        // Sides with 5, 2, 5 and 2 repeats: 14 in all. Two chains at each of four corners.
        assertThat(WorkedRound.of(BANKS, PerSide.pairs(5, 2)))
                .containsExactly(
                        front(1, "A", Map.of(BACK_LOOP, 4 * 4L + 14 * 3, CHAIN, 8L)),
                        front(2, "B", Map.of(BACK_LOOP, 4 * 6L + 14 * 2, PLAIN, 14L, CHAIN, 8L)),
                        front(3, "A", Map.of(BACK_LOOP, 4 * 6L + 14, LONG, 4 * 2L + 14, CHAIN, 14L + 8)));
    }

    @Test
    void the_stitches_of_a_round_are_those_of_its_sides_and_corners() {
        for (long seed = 0; seed < 300; seed++) {
            Chart chart = new RandomCharts(seed).any();
            PerSide<Integer> repeats = PerSide.of(3, 0, 7, 1);
            assertThat(WorkedRound.of(chart, repeats).stream().map(WorkedRound::total))
                    .isEqualTo(IntStream.rangeClosed(1, chart.rounds().size())
                            .mapToObj(r -> 4L * chart.corner().chains()
                                    + PerSide.sum(repeats.map(
                                            m -> chart.shape(Side.FIRST).stitches(r, m))))
                            .toList());
        }
    }

    @Test
    void a_measured_round_is_its_stitches_times_what_one_takes_and_two_tails() {
        // By hand: 58 stitches at 5.6 cm, 8 chains at 3 cm, two tails of 15 cm; then 52 at 5.6, 14 at 5.75, 8 at 3 and
        // the
        // tails; then 38 at 5.6, 22 long at 10, 22 chains at 3 and the tails.
        Amounts amounts = Amounts.of(made(BANKS, MEASURED), PerSide.pairs(5, 2));
        assertThat(amounts.rounds().stream().map(Amounts.OfRound::metres))
                .usingElementComparator(AmountsTest::toTheMillimetre)
                .containsExactly(3.788, 4.257, 5.288);
        assertThat(amounts.rounds().stream().map(Amounts.OfRound::metresSoFar))
                .usingElementComparator(AmountsTest::toTheMillimetre)
                .containsExactly(3.788, 4.257, 3.788 + 5.288);
        assertThat(amounts.estimated()).isEmpty();
        assertThat(amounts.yarns().get(0).workedMetres()).isCloseTo(9.076, within(0.0005));
        assertThat(amounts.yarns().get(0).metres()).isCloseTo(9.9836, within(0.0005));
    }

    /**
     * 20 stitches took 44 inches, so 196 take 431.2 inches. Derived, not published: these are 12.0 yards.
     * http://crochetpatterns09.blogspot.com/2013/09/several-tips-for-finding-yardage-on.html
     */
    @Test
    void a_published_row_takes_its_published_inches() {
        // 4 sides of 49 stitches are 196; the chains and the tails of our round come off again.
        Chart chart = made(
                chart(Round.of("A", "p", "p".repeat(47), "p")), use(44 * CM_IN_INCH, 44 * CM_IN_INCH, 1, 60, 1, 1));
        double cm = Amounts.of(chart, PerSide.all(1)).rounds().get(0).metres() * 100 - 8 * 3 - 2 * 15;
        assertThat(cm).isCloseTo(431.2 * CM_IN_INCH, within(1e-9));
        assertThat(cm / CM_IN_YARD).isCloseTo(12.0, within(0.05));
    }

    @Test
    void unmeasured_stitches_take_the_published_length_and_the_border_says_so() {
        // 5.6 cm with a hook of 5.5 mm is the same 44 inches for 20, rounded: the source is the same.
        StitchLengths lengths = StitchLengths.of(PatternDetails.NONE);
        assertThat(lengths.cm(PLAIN) * 20).isCloseTo(44 * CM_IN_INCH, within(0.5));
        assertThat(lengths.cm(CHAIN)).isLessThan(lengths.cm(PLAIN));
        assertThat(lengths.cm(PLAIN)).isLessThan(lengths.cm(TALL));
        assertThat(Amounts.of(BANKS, PerSide.all(1)).estimated()).containsExactly(BACK_LOOP, PLAIN, LONG, CHAIN);
    }

    /**
     * Strips of one row of 5 inches took 53 and 102 inches, so a tall stitch takes 1.92 times a plain one; without the
     * foundation of the strips, 4.8 inches an inch, it is 2.7: https://www.windchilde.com/bluedepth/tag/crochet/
     */
    @Test
    void the_shares_of_estimates_lie_between_the_published_measurements() {
        assertThat(TALL.share()).isBetween(102 / 53.0, (102 / 5.0 - 4.8) / (53 / 5.0 - 4.8));
        assertThat(CHAIN.share()).isBetween(4.8 / (53 / 5.0), 5.1 / (53 / 5.0 - 4.8));
    }

    @Test
    void estimates_go_with_the_hook_and_with_what_was_measured() {
        PatternDetails hook = PatternDetails.NONE.withHook(Optional.of(HookSize.ofMm(4.4)));
        assertThat(StitchLengths.of(hook).cm(PLAIN)).isCloseTo(5.6 * 0.8, within(1e-9));

        YarnUse only = new YarnUse(
                OptionalDouble.empty(),
                OptionalDouble.of(90),
                OptionalDouble.empty(),
                OptionalDouble.of(50),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                YarnUse.NONE.extras());
        StitchLengths lengths = StitchLengths.of(hook.withUse(Optional.of(only)));
        assertThat(List.of(lengths.cm(BACK_LOOP), lengths.cm(PLAIN), lengths.cm(LONG), lengths.cm(CHAIN)))
                .containsExactly(4.5, 4.5, 9.0, 2.5);
        assertThat(List.of(lengths.isEstimate(BACK_LOOP), lengths.isEstimate(PLAIN), lengths.isEstimate(CHAIN)))
                .containsExactly(true, false, false);
    }

    @Test
    void what_a_back_loop_stitch_takes_stands_before_what_a_plain_one_takes() {
        YarnUse both = new YarnUse(
                OptionalDouble.of(100),
                OptionalDouble.of(120),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                YarnUse.NONE.extras());
        StitchLengths lengths = StitchLengths.of(PatternDetails.NONE.withUse(Optional.of(both)));
        assertThat(List.of(lengths.cm(BACK_LOOP), lengths.cm(PLAIN), lengths.cm(LONG)))
                .containsExactly(5.0, 6.0, 10.0);
    }

    @Test
    void weight_and_balls_follow_from_the_band_of_a_ball() {
        Yarn banded = PEAT.withBall(Optional.of(new Ball(160, 50)));
        Amounts.OfYarn yarn = new Amounts.OfYarn(banded, 291);
        assertThat(yarn.metres()).isCloseTo(320.1, within(1e-9));
        assertThat(yarn.grams().orElseThrow()).isCloseTo(100.03, within(0.005));
        assertThat(yarn.balls()).isEqualTo(OptionalInt.of(3));
        assertThat(new Amounts.OfYarn(banded, 320 / 1.1).balls()).isEqualTo(OptionalInt.of(2));
        assertThat(new Amounts.OfYarn(banded, 0).balls()).isEqualTo(OptionalInt.of(0));
        assertThat(new Amounts.OfYarn(PEAT, 291).grams()).isEmpty();
        assertThat(new Amounts.OfYarn(PEAT, 291).balls()).isEmpty();
    }

    /**
     * Seven rounds at the front: a base round behind it, three tall rounds and a low one, then a slip stitch in every stitch and corner chain.
     * Back round k has the counts of front round 2k: common practice, no source.
     */
    @Test
    void a_back_layer_and_its_joining_round_are_counted_in_the_yarn_of_the_outermost_round() {
        Chart front = Chart.blank("Banks", new SideShape(2, 5, 1), 7, List.of(PEAT, CHALK));
        Chart chart = front.withMaking(PatternDetails.NONE.withBack(Optional.of(Back.DEFAULT)));
        List<WorkedRound> rounds = WorkedRound.of(chart, PerSide.all(5));
        // Round 2k has 2 + 1 + 25 + 4k stitches on a side.
        assertThat(rounds.subList(7, 13))
                .containsExactly(
                        new WorkedRound(WorkedRound.Layer.BACK, 0, "A", Map.of(PLAIN, 4 * 28L, CHAIN, 8L)),
                        new WorkedRound(WorkedRound.Layer.BACK, 1, "A", Map.of(TALL, 4 * 32L, CHAIN, 8L)),
                        new WorkedRound(WorkedRound.Layer.BACK, 2, "A", Map.of(TALL, 4 * 36L, CHAIN, 8L)),
                        new WorkedRound(WorkedRound.Layer.BACK, 3, "A", Map.of(TALL, 4 * 40L, CHAIN, 8L)),
                        new WorkedRound(WorkedRound.Layer.BACK, 4, "A", Map.of(PLAIN, 4 * 42L, CHAIN, 8L)),
                        new WorkedRound(WorkedRound.Layer.JOINING, 1, "A", Map.of(SLIP, 4 * 42L + 8)));
        assertThat(Amounts.of(chart, PerSide.all(5)).yarns().get(1))
                .isEqualTo(Amounts.of(front, PerSide.all(5)).yarns().get(1));
    }

    @Test
    void a_yarn_is_missing_by_what_its_metres_with_the_margin_are_over_those_in_hand() {
        Amounts.OfYarn peat = new Amounts.OfYarn(PEAT.withMetresInHand(OptionalDouble.of(30)), 40);
        Amounts.OfYarn chalk = new Amounts.OfYarn(CHALK.withMetresInHand(OptionalDouble.of(45)), 40);
        Amounts.OfYarn unknown = new Amounts.OfYarn(new Yarn("C", "Fog", Colour.parse("#e4dccb")), 40);
        Amounts amounts = new Amounts(List.of(), List.of(peat, chalk, unknown), List.of());
        assertThat(amounts.missing()).containsExactly(peat);
        assertThat(peat.missingMetres()).isCloseTo(14, within(1e-9));
        assertThat(amounts.metres()).isCloseTo(132, within(1e-9));
    }

    private static WorkedRound front(int number, String yarn, Map<YarnStitch, Long> stitches) {
        return new WorkedRound(WorkedRound.Layer.FRONT, number, yarn, stitches);
    }

    private static Chart chart(Round... rounds) {
        return Chart.blank("Banks", new SideShape(0, 1, 0), 1, List.of(PEAT, CHALK))
                .withRounds(List.of(rounds));
    }

    private static Chart made(Chart chart, YarnUse use) {
        return chart.withMaking(chart.making().withUse(Optional.of(use)));
    }

    private static YarnUse use(double backLoop, double plain, double dropped, double chain, double tall, double slip) {
        return new YarnUse(
                OptionalDouble.of(backLoop),
                OptionalDouble.of(plain),
                OptionalDouble.of(dropped),
                OptionalDouble.of(chain),
                OptionalDouble.of(tall),
                OptionalDouble.of(slip),
                YarnUse.NONE.extras());
    }

    private static int toTheMillimetre(double one, double two) {
        return Math.abs(one - two) < 0.0005 ? 0 : Double.compare(one, two);
    }
}
