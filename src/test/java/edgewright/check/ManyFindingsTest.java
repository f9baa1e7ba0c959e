package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Of a chart that breaks the rules very often the first thousand findings are told, and the rest are counted. */
class ManyFindingsTest {
    private static final int TOLD = 1_000;

    @Test
    void the_first_thousand_findings_are_told_by_round_and_place_and_the_rest_counted() {
        RandomCharts charts = new RandomCharts(71);
        for (int i = 0; i < 40; i++) {
            Chart chart = wide(charts.random());
            PerSide<Integer> sides = PerSide.all(charts.random().nextInt(200));
            Verdict verdict = Checker.check(chart, sides);
            List<PlainJudge.Found> all = PlainJudge.judge(chart, Optional.of(sides));
            assertThat(all).hasSizeGreaterThan(TOLD);
            assertThat(verdict.findings()).extracting(PlainJudge.Found::of).isEqualTo(all.subList(0, TOLD));
            assertThat(verdict.count()).isEqualTo(count(all));
            assertThat(verdict.untold()).isEqualTo(all.size() - TOLD);
        }
    }

    @Test
    void errors_behind_a_thousand_warnings_are_told_when_errors_are_asked_for() {
        Chart chart = Sketches.chart("""
                3 A bbb|%1$s|bbb
                2 A  bb|%1$s|bb
                1 A   b|%2$s|b
                """.formatted("l".repeat(1_200), "b".repeat(1_200)));
        Verdict verdict = Checker.check(chart);
        assertThat(verdict.findings()).hasSize(TOLD).allMatch(finding -> finding.severity() == Severity.WARNING);
        assertThat(verdict.count()).isEqualTo(new FindingCount(1_200, 2_402));
        assertThat(verdict.hasErrors()).isTrue();
        assertThat(verdict.errors()).hasSize(TOLD).allMatch(finding -> finding.severity() == Severity.ERROR);
        assertThat(verdict.errors().get(0)).hasToString("covered-loop, round 3, repeat 1");
    }

    @Test
    void the_findings_of_each_round_are_counted_whether_they_are_told_or_not() {
        Chart chart = wide(new Random(72));
        Verdict verdict = Checker.check(chart, PerSide.all(1));
        List<PlainJudge.Found> all = PlainJudge.judge(chart, Optional.of(PerSide.all(1)));
        for (int round = 1; round <= chart.rounds().size(); round++) {
            int number = round;
            assertThat(verdict.countByRound().get(round - 1))
                    .isEqualTo(count(all.stream()
                            .filter(found -> found.where().inRound().orElse(0) == number)
                            .toList()));
        }
    }

    @Test
    void the_lengths_of_a_ragged_chart_are_told_and_counted_alike() {
        Chart chart = Sketches.chart("""
                2 B bb|b|bb
                1 A  b|b|b
                """);
        Chart ragged = Edits.insertRounds(chart, 2, Collections.nCopies(600, "B"));
        for (int round = 2; round <= 602; round++) {
            ragged = ragged.withRound(
                    round,
                    ragged.round(round)
                            .with(Section.REPEAT, Stitches.of("bb"))
                            .with(Section.TO_CORNER, Stitches.of("b")));
        }
        Verdict verdict = Checker.check(ragged);
        assertThat(verdict.findings()).hasSize(TOLD);
        assertThat(verdict.count()).isEqualTo(new FindingCount(1_202, 0));
        assertThat(verdict.countByRound().get(0)).isEqualTo(FindingCount.NONE);
        assertThat(verdict.countByRound().get(601)).isEqualTo(new FindingCount(2, 0));
        assertThat(verdict.untold()).isEqualTo(202);
    }

    @Test
    void after_an_edit_of_such_a_chart_a_recheck_says_what_a_check_says() {
        Random random = new Random(73);
        for (int i = 0; i < 10; i++) {
            Verdict verdict = Checker.check(wide(random), PerSide.all(3));
            for (int edit = 0; edit < 20; edit++) {
                Chart edited = edited(verdict.chart(), random);
                Verdict recheck = Checker.recheck(verdict, edited);
                Verdict check = Checker.check(edited, PerSide.all(3));
                assertThat(recheck).isEqualTo(check);
                assertThat(recheck.count()).isEqualTo(check.count());
                assertThat(recheck.errors()).isEqualTo(check.errors());
                for (int round = 1; round <= edited.rounds().size(); round++) {
                    assertThat(recheck.countByRound().get(round - 1))
                            .isEqualTo(check.countByRound().get(round - 1));
                }
                verdict = recheck;
            }
        }
    }

    private static Chart edited(Chart chart, Random random) {
        int last = chart.rounds().size();
        int round = 1 + random.nextInt(last);
        return switch (random.nextInt(4)) {
            case 0 -> last == 1 ? chart : Edits.deleteRounds(chart, round, round);
            case 1 -> Edits.duplicateRounds(chart, round, round);
            case 2 -> Edits.changeYarn(chart, round, random.nextBoolean() ? "A" : "B");
            default ->
                Edits.setStitches(
                        chart,
                        List.of(new Place(round, Section.REPEAT, 1 + random.nextInt(200))),
                        Stitch.values()[random.nextInt(4)]);
        };
    }

    /** Twelve rounds of a repeat of 200, any stitch anywhere. */
    private static Chart wide(Random random) {
        StringBuilder sketch = new StringBuilder();
        for (int round = 12; round >= 1; round--) {
            sketch.append(round)
                    .append(random.nextBoolean() ? " A " : " B ")
                    .append(any(random, round))
                    .append('|')
                    .append(any(random, 200))
                    .append('|')
                    .append(any(random, 3 + round))
                    .append('\n');
        }
        return Sketches.chart(sketch.toString());
    }

    private static String any(Random random, int length) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < length; i++) {
            letters.append("lllbpc".charAt(random.nextInt(6)));
        }
        return letters.toString();
    }

    private static FindingCount count(List<PlainJudge.Found> found) {
        int errors = (int) found.stream().filter(ManyFindingsTest::isError).count();
        return new FindingCount(errors, found.size() - errors);
    }

    private static boolean isError(PlainJudge.Found found) {
        return !List.of("other-yarn", "deep-gap", "loose-run", "low-contrast", "unseen-long")
                .contains(found.rule());
    }
}
