package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import edgewright.chart.Chart;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** A check is made after every stitch that is painted: it must not make work for the garbage collector. */
class CleanRoundsTest {

    @Test
    void nothing_is_made_for_a_round_without_findings() {
        RandomCharts charts = new RandomCharts(51);
        for (int i = 0; i < 50; i++) {
            Chart chart = withoutWarnings(charts.workable());
            judgeAll(new RoundJudge(chart), chart);
            RoundJudge judge = new RoundJudge(chart);
            long before = allocatedBytes();
            judgeAll(judge, chart);
            long after = allocatedBytes();
            assertThat(after - before).as(Sketches.rounds(chart)).isEqualTo(allocatedByMeasuring());
        }
    }

    @Test
    void a_workable_chart_breaks_no_rule_in_any_round() {
        Chart chart = withoutWarnings(new RandomCharts(52).workable());
        Verdict verdict = Checker.check(chart);
        for (int round = 1; round <= chart.rounds().size(); round++) {
            assertThat(verdict.ofStitches(round)).isSameAs(FindingCount.NONE);
        }
    }

    private static void judgeAll(RoundJudge judge, Chart chart) {
        for (int round = 1; round <= chart.rounds().size(); round++) {
            judge.count(round);
        }
    }

    /** The chart with back-loop stitches wherever a stitch is warned of. */
    private static Chart withoutWarnings(Chart chart) {
        Verdict verdict = Checker.check(chart);
        while (verdict.findings().stream()
                .anyMatch(finding -> finding.place().oneStitch().isPresent())) {
            Finding first = verdict.findings().stream()
                    .filter(finding -> finding.place().oneStitch().isPresent())
                    .findFirst()
                    .orElseThrow();
            verdict = Checker.recheck(verdict, first.remedies().get(0).applyTo(verdict.chart()));
        }
        return verdict.chart();
    }

    private static long allocatedByMeasuring() {
        long before = allocatedBytes();
        return allocatedBytes() - before;
    }

    private static long allocatedBytes() {
        return ((ThreadMXBean) ManagementFactory.getThreadMXBean()).getCurrentThreadAllocatedBytes();
    }
}
