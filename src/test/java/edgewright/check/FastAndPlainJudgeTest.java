package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Extras;
import edgewright.chart.PerSide;
import edgewright.chart.Rules;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Stitch;
import edgewright.testing.EveryChart;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The checker, which looks at sixty-four stitches at once, and the plain judge, which walks along whole sides. */
class FastAndPlainJudgeTest {
    @Test
    void both_agree_on_charts_of_every_shape() {
        RandomCharts charts = new RandomCharts(11);
        for (int i = 0; i < 1_500; i++) {
            assertAgreement(charts.any());
        }
    }

    @Test
    void both_agree_on_many_small_charts_worked_round_any_piece() {
        RandomCharts charts = new RandomCharts(12);
        for (int i = 0; i < 6_000; i++) {
            Chart chart = charts.small();
            Random random = charts.random();
            PerSide<Integer> sides =
                    PerSide.of(random.nextInt(30), random.nextInt(30), random.nextInt(30), random.nextInt(30));
            assertAgreement(chart);
            assertAgreement(chart, Checker.check(chart, sides), Optional.of(sides));
        }
    }

    @Test
    void both_find_nothing_but_lengths_in_a_ragged_chart() {
        RandomCharts charts = new RandomCharts(13);
        for (int i = 0; i < 1_000; i++) {
            Chart chart = charts.ragged();
            Verdict verdict = Checker.check(chart, PerSide.all(8));
            assertThat(found(verdict)).isEqualTo(PlainJudge.judge(chart, Optional.of(PerSide.all(8))));
            assertThat(verdict.judged()).isFalse();
            assertThat(verdict.longStitchesJudged()).isZero();
        }
    }

    /** Each line is a size and the stitches chosen from; together some 130,000 charts. */
    @ParameterizedTest
    @CsvSource({
        "0, 1, 0, 2, all, false, true",
        "0, 2, 0, 2, bl, true, true",
        "0, 1, 0, 3, bl, false, false",
        "0, 1, 0, 3, lc, false, true"
    })
    void both_agree_on_every_chart_of_a_small_size(
            int a, int w, int b, int rounds, String letters, boolean stacking, boolean cornerChains) {
        EveryChart every = new EveryChart(
                new SideShape(a, w, b),
                rounds,
                letters.equals("all") ? Stitch.LETTERS : letters,
                new Rules(cornerChains, stacking, 2, Extras.NONE));
        every.forEach(FastAndPlainJudgeTest::assertAgreement);
    }

    private static void assertAgreement(Chart chart) {
        assertAgreement(chart, Checker.check(chart), Optional.empty());
    }

    private static void assertAgreement(Chart chart, Verdict verdict, Optional<PerSide<Integer>> sides) {
        List<PlainJudge.Found> fast = found(verdict);
        List<PlainJudge.Found> plain = PlainJudge.judge(chart, sides);
        if (!fast.equals(plain) || !verdict.judged() || verdict.longStitchesJudged() != longs(chart)) {
            assertThat(fast).as(Sketches.rounds(chart) + chart.rules()).isEqualTo(plain);
            assertThat(verdict.longStitchesJudged()).isEqualTo(longs(chart));
            assertThat(verdict.judged()).isTrue();
        }
    }

    private static List<PlainJudge.Found> found(Verdict verdict) {
        return verdict.breaches()
                .map(breach -> PlainJudge.Found.of(new Finding(breach, verdict)))
                .toList();
    }

    private static int longs(Chart chart) {
        return (int) chart.rounds().stream()
                .flatMapToInt(round -> round.side(Side.FIRST, 1).letters().chars())
                .filter(letter -> letter == 'l')
                .count();
    }
}
