package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** All findings of one rule mended as one edit. */
class MendedKindTest {

    /** Held against the plain judge and a count of its own, which know nothing of remedies. */
    @Test
    void all_of_a_kind_mended_leaves_no_finding_that_was_not_there_and_says_what_it_changes_and_leaves() {
        RandomCharts charts = new RandomCharts(131);
        int mended = 0;
        int left = 0;
        for (int i = 0; i < 250; i++) {
            Chart chart = charts.small();
            Verdict before = Checker.check(chart);
            for (String rule :
                    before.findings().stream().map(Finding::rule).distinct().toList()) {
                MendedKind kind = before.mendAll(rule);
                String told = rule + "\n" + Sketches.rounds(chart) + "\n" + Sketches.rounds(kind.chart());
                List<PlainJudge.Found> found = PlainJudge.judge(kind.chart(), Optional.empty());
                assertThat(places(found)).as(told).isSubsetOf(places(PlainJudge.judge(chart, Optional.empty())));
                assertThat(kind.chart().rules()).as(told).isEqualTo(chart.rules());
                assertThat(kind.changedCells()).as(told).isEqualTo(changedCells(chart, kind.chart()));
                assertThat(kind.left()).as(told).isEqualTo(count(found, rule));
                assertThat(kind.mended() + kind.left())
                        .as(told)
                        .isEqualTo(count(PlainJudge.judge(chart, Optional.empty()), rule));
                mended += kind.mended();
                left += kind.left();
            }
        }
        assertThat(mended).as("findings mended").isGreaterThan(1_000);
        assertThat(left).as("findings of which nothing is known to help").isPositive();
    }

    @Test
    void sections_of_a_wrong_length_are_all_evened_out() {
        Chart chart = Sketches.chart("""
                2 B bbb|bb|blp
                1 A   b|b|b
                """);
        MendedKind kind = Checker.check(chart).mendAll("ragged-section");
        assertThat(List.of(kind.mended(), kind.left())).containsExactly(3, 0);
        assertThat(Checker.check(kind.chart()).judged()).isTrue();
    }

    private static Set<String> places(List<PlainJudge.Found> found) {
        return found.stream().map(one -> one.rule() + " " + one.where()).collect(Collectors.toCollection(TreeSet::new));
    }

    private static int count(List<PlainJudge.Found> found, String rule) {
        return (int) found.stream().filter(one -> one.rule().equals(rule)).count();
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
}
