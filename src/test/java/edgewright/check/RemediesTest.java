package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class RemediesTest {

    @Test
    void what_is_offered_against_a_hidden_loop_stands_in_this_order() {
        assertRemedies("""
                4 B bbbb|bb|bbbb
                3 A  bbb|lb|bbb
                2 B   bb|lb|bb
                1 A    b|bb|b
                """, """
                take-out 1
                4 B bbbb|bb|bbbb
                3 A  bbb|bb|bbb
                2 B   bb|lb|bb
                1 A    b|bb|b
                back-loop-below 1
                4 B bbbb|bb|bbbb
                3 A  bbb|lb|bbb
                2 B   bb|bb|bb
                1 A    b|bb|b
                """);
    }

    @Test
    void a_long_stitch_moves_to_the_nearest_round_of_its_column_where_it_can_be_worked() {
        assertRemedies("""
                6 B bbbbbb|b|bbbbbb
                5 A  bbbbb|b|bbbbb
                4 B   bbbb|b|bbbb
                3 A    bbl|b|bbb
                2 B     bl|b|bb
                1 A      b|b|b
                """, """
                take-out 1
                6 B bbbbbb|b|bbbbbb
                5 A  bbbbb|b|bbbbb
                4 B   bbbb|b|bbbb
                3 A    bbb|b|bbb
                2 B     bl|b|bb
                1 A      b|b|b
                back-loop-below 1
                6 B bbbbbb|b|bbbbbb
                5 A  bbbbb|b|bbbbb
                4 B   bbbb|b|bbbb
                3 A    bbl|b|bbb
                2 B     bb|b|bb
                1 A      b|b|b
                move 2
                6 B bbbbbb|b|bbbbbb
                5 A  bbbbl|b|bbbbb
                4 B   bbbb|b|bbbb
                3 A    bbb|b|bbb
                2 B     bl|b|bb
                1 A      b|b|b
                """);
    }

    @Test
    void the_stitch_below_becomes_back_loop_where_its_loop_was_used() {
        assertRemedies("""
                2 B bb|lb|bb
                1 A  b|pb|b
                """, """
                back-loop-below 0
                2 B bb|lb|bb
                1 A  b|bb|b
                take-out 1
                2 B bb|bb|bb
                1 A  b|pb|b
                """);
    }

    @Test
    void stacking_can_be_allowed_after_all_else() {
        assertRemedies("""
                4 B bbbb|lb|bbbb
                3 A  bbb|bb|bbb
                2 B   bb|lb|bb
                1 A    b|bb|b
                """, """
                take-out 1
                4 B bbbb|bb|bbbb
                3 A  bbb|bb|bbb
                2 B   bb|lb|bb
                1 A    b|bb|b
                back-loop-two-below 1
                4 B bbbb|lb|bbbb
                3 A  bbb|bb|bbb
                2 B   bb|bb|bb
                1 A    b|bb|b
                allow-stacking 0
                4 B bbbb|lb|bbbb
                3 A  bbb|bb|bbb
                2 B   bb|lb|bb
                1 A    b|bb|b
                """);
    }

    @Test
    void a_loose_run_is_broken_in_its_middle_or_let_pass() {
        assertRemedies("""
                looseRun 3
                2 B bb|b|lllllb
                1 A  b|b|bbbbb
                """, """
                break-run 1
                2 B bb|b|llbllb
                1 A  b|b|bbbbb
                allow-run 0
                2 B bb|b|lllllb
                1 A  b|b|bbbbb
                """);
        assertRemedies("""
                looseRun 3
                2 B bb|llllllll|bb
                1 A  b|bbbbbbbb|b
                """, """
                break-run 2
                2 B bb|llblllbl|bb
                1 A  b|bbbbbbbb|b
                """);
    }

    @Test
    void a_ragged_section_is_evened_out_at_the_corner_with_a_stitch_that_can_stand_there() {
        assertRemedies("""
                2 B bb|b|blp
                1 A  b|b|b
                """, """
                even-out 1
                2 B bb|b|bb
                1 A  b|b|b
                """);
        assertRemedies("""
                2 B bbb|bb|blp
                1 A   b|b|b
                """, """
                even-out 1
                2 B bb|bb|blp
                1 A  b|b|b
                even-out-all 3
                2 B bb|b|bb
                1 A  b|b|b
                """);
    }

    @Test
    void a_long_stitch_that_is_not_seen_is_taken_out_or_the_round_that_it_covers_is_worked_in_another_yarn() {
        assertRemedies("""
                4 B bbbb|bb|bbbb
                3 A  bbb|lb|bbb
                2 A   bb|bb|bb
                1 A    b|bb|b
                """, """
                take-out 0
                4 B bbbb|bb|bbbb
                3 A  bbb|bb|bbb
                2 A   bb|bb|bb
                1 A    b|bb|b
                change-yarn 5
                4 B bbbb|bb|bbbb
                3 A  bbb|lb|bbb
                2 B   bb|bb|bb
                1 A    b|bb|b
                """);
    }

    @Test
    void a_stitch_taken_out_of_the_start_of_a_long_row_leaves_no_row_too_long() {
        assertRemedies("""
                looseRun 3
                2 B  bb|llllllb|bb
                1 A   b|pbbbbbb|b
                """, """
                back-loop-below 0
                2 B bb|llllllb|bb
                1 A  b|bbbbbbb|b
                take-out-of-run 2
                2 B bb|bllbllb|bb
                1 A  b|pbbbbbb|b
                """);
    }

    /** With round 3 in Peat the long stitch of round 5 would land on another yarn. */
    @Test
    void no_yarn_is_changed_where_that_brings_a_warning() {
        assertRemedies("""
                C Rust #a9502f
                5 C bbbbb|lb|bbbbb
                4 B  bbbb|bb|bbbb
                3 C   bbb|lb|bbb
                2 B    bb|bb|bb
                1 A     b|bb|b
                """, """
                take-out 1
                5 C bbbbb|lb|bbbbb
                4 B  bbbb|bb|bbbb
                3 C   bbb|bb|bbb
                2 B    bb|bb|bb
                1 A     b|bb|b
                move 2
                5 C bbbbb|lb|bbbbb
                4 B  bbbb|bb|bbbb
                3 C   bbb|bb|bbb
                2 B    bb|lb|bb
                1 A     b|bb|b
                """);
    }

    @Test
    void corner_sections_are_widened_alike_where_that_can_be() {
        Verdict verdict = Checker.check(Sketches.chart("""
                        1 A bb|bbbb|bb
                        """), PerSide.all(8));
        assertThat(verdict.findings().get(0).remedies())
                .extracting(remedy -> told(remedy) + " "
                        + Sketches.rounds(remedy.applyTo(verdict.chart())).strip())
                .containsExactly("change-corners 2 1 A bbb|bbbb|bbb", "change-corners 2 1 A b|bbbb|b");
    }

    @Test
    void a_yarn_is_made_lighter_or_darker_by_as_little_as_is_enough() {
        Verdict verdict = Checker.check(Sketches.chart("""
                C Mud #3f3d46
                2 C bb|b|bb
                1 A  b|b|b
                """));
        Remedy remedy = verdict.findings().get(0).remedies().get(0);
        assertThat(verdict.findings().get(0).remedies()).extracting(Remedy::id).containsExactly("lighten-yarn");
        assertThat(Checker.check(remedy.applyTo(verdict.chart())).findings()).isEmpty();
    }

    /** Held against the plain judge, which knows nothing of remedies. */
    @Test
    void every_remedy_removes_its_finding_and_brings_no_other() {
        RandomCharts charts = new RandomCharts(31);
        Map<String, Integer> tried = new TreeMap<>();
        for (int i = 0; i < 800; i++) {
            Optional<PerSide<Integer>> sides =
                    i % 4 == 0 ? Optional.of(PerSide.all(charts.random().nextInt(20))) : Optional.empty();
            Chart chart = i % 10 == 0 ? charts.ragged() : charts.small();
            tryRemedies(chart, sides, tried);
        }
        assertThat(tried.keySet()).hasSize(16);
    }

    @Test
    void remedies_are_as_good_for_charts_of_every_size() {
        RandomCharts charts = new RandomCharts(32);
        for (int i = 0; i < 60; i++) {
            Chart chart = charts.any();
            Verdict verdict = Checker.check(chart);
            List<Finding> some = verdict.findings().stream()
                    .filter(finding ->
                            charts.random().nextInt(verdict.findings().size()) < 4)
                    .toList();
            some.forEach(finding -> tryRemedies(verdict, finding, Optional.empty(), new HashMap<>()));
        }
    }

    @Test
    void every_error_of_a_chart_that_is_not_ragged_has_a_remedy() {
        RandomCharts charts = new RandomCharts(33);
        for (int i = 0; i < 300; i++) {
            for (Finding finding : Checker.check(charts.small()).findings()) {
                if (!finding.rule().equals("low-contrast")) {
                    assertThat(finding.remedies()).as(finding.toString()).isNotEmpty();
                }
            }
        }
    }

    @Test
    void best_remedies_one_after_the_other_make_a_chart_workable() {
        RandomCharts charts = new RandomCharts(34);
        for (int i = 0; i < 300; i++) {
            Verdict verdict = Checker.check(i % 10 == 0 ? charts.ragged() : charts.small());
            int steps = 0;
            while (verdict.hasErrors()) {
                Remedy best = verdict.errors().get(0).remedies().get(0);
                verdict = Checker.recheck(verdict, best.applyTo(verdict.chart()));
                assertThat(++steps).isLessThan(500);
            }
        }
    }

    private static void tryRemedies(Chart chart, Optional<PerSide<Integer>> sides, Map<String, Integer> tried) {
        Verdict verdict = sides.map(stitches -> Checker.check(chart, stitches)).orElseGet(() -> Checker.check(chart));
        verdict.findings().forEach(finding -> tryRemedies(verdict, finding, sides, tried));
    }

    private static void tryRemedies(
            Verdict verdict, Finding finding, Optional<PerSide<Integer>> sides, Map<String, Integer> tried) {
        Chart chart = verdict.chart();
        String before = chart.toString();
        assertThat(finding.remedies())
                .isSortedAccordingTo(
                        Comparator.comparing((Remedy remedy) -> remedy.id().startsWith("allow-"))
                                .thenComparing(Remedy::changedCells));
        for (Remedy remedy : finding.remedies()) {
            Chart mended = remedy.applyTo(chart);
            List<PlainJudge.Found> left = PlainJudge.judge(mended, sides);
            Supplier<String> told =
                    () -> Sketches.rounds(chart) + finding + ": " + remedy + "\n" + Sketches.rounds(mended);
            assertThat(left)
                    .as(told)
                    .noneMatch(found ->
                            found.rule().equals(finding.rule()) && found.where().equals(finding.place()));
            assertThat(newFindings(verdict, mended, left)).as(told).isEmpty();
            if (verdict.judged() && chart.shape(Side.FIRST).equals(mended.shape())) {
                assertThat(remedy.changedCells()).as(told).isEqualTo(changedCells(chart, mended));
            }
            assertThat(chart).as("the chart to go back to").hasToString(before);
            tried.merge(remedy.id(), 1, Integer::sum);
        }
    }

    /**
     * What was not found before: rules and places, or the number of a rule's findings if the columns have moved. A ragged chart
     * was judged by its lengths alone.
     */
    private static Set<String> newFindings(Verdict before, Chart mended, List<PlainJudge.Found> left) {
        boolean moved = !before.chart().shape().equals(mended.shape());
        List<String> added = new ArrayList<>(left.stream()
                .filter(found -> before.judged() || found.rule().equals("ragged-section"))
                .map(found -> found.rule() + (moved ? "" : found.where()))
                .toList());
        before.breaches()
                .map(breach -> breach.rule().id() + (moved ? "" : breach.place()))
                .forEach(added::remove);
        return new TreeSet<>(added);
    }

    /** Cells that show another colour, each looked at on its own. */
    private static int changedCells(Chart chart, Chart mended) {
        int changed = 0;
        for (int r = 1; r <= chart.rounds().size(); r++) {
            for (Section section : Section.values()) {
                for (int i = 1; i <= chart.round(r).section(section).length(); i++) {
                    Place cell = new Place(r, section, i);
                    changed += shown(chart, cell).equals(shown(mended, cell)) ? 0 : 1;
                }
            }
        }
        return changed;
    }

    private static Colour shown(Chart chart, Place cell) {
        return chart.yarnOf(chart.shownRound(cell)).colour();
    }

    /** The remedies of the first finding, each with the rounds that it leads to. */
    private static void assertRemedies(String sketch, String expected) {
        Chart chart = Sketches.chart(sketch);
        String told = Checker.check(chart).findings().get(0).remedies().stream()
                .map(remedy -> told(remedy) + "\n" + Sketches.rounds(remedy.applyTo(chart)))
                .collect(Collectors.joining());
        assertThat(told).isEqualTo(expected);
    }

    private static String told(Remedy remedy) {
        return remedy.id() + " " + remedy.changedCells();
    }
}
