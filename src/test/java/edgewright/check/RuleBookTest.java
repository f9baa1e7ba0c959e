package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.testing.Sketches;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Walks the rule book: what a page says and shows must be there, and be true. */
class RuleBookTest {

    static Stream<RulePage> pages() {
        return RuleBook.all().stream().map(rule -> new RuleBook(English.LANGUAGE).page(rule.id()));
    }

    @Test
    void the_book_holds_the_fifteen_rules_sorted_by_name() {
        assertThat(RuleBook.all())
                .containsExactly(
                        new RuleEntry("chain-at-corner", Severity.ERROR),
                        new RuleEntry("covered-loop", Severity.ERROR),
                        new RuleEntry("deep-gap", Severity.WARNING),
                        new RuleEntry("lands-on-chain", Severity.ERROR),
                        new RuleEntry("lands-on-corner-chain", Severity.ERROR),
                        new RuleEntry("lands-on-long", Severity.ERROR),
                        new RuleEntry("loose-run", Severity.WARNING),
                        new RuleEntry("low-contrast", Severity.WARNING),
                        new RuleEntry("no-round-below", Severity.ERROR),
                        new RuleEntry("other-yarn", Severity.WARNING),
                        new RuleEntry("past-corner", Severity.ERROR),
                        new RuleEntry("ragged-section", Severity.ERROR),
                        new RuleEntry("unclosed-side", Severity.ERROR),
                        new RuleEntry("unseen-long", Severity.WARNING),
                        new RuleEntry("used-loop", Severity.ERROR));
    }

    @Test
    void thereIsAPageForEachRuleInEveryLanguageAndNoOther() throws IOException {
        List<String> wanted =
                RuleBook.all().stream().map(rule -> rule.id() + ".txt").toList();
        try (Stream<Path> languages = Files.list(Path.of("src/main/resources/edgewright/language"))) {
            assertThat(languages).isNotEmpty().allSatisfy(language -> {
                try (Stream<Path> pages = Files.list(language.resolve("check/rules"))) {
                    assertThat(pages.map(page -> page.getFileName().toString()))
                            .containsExactlyInAnyOrderElementsOf(wanted);
                }
            });
        }
    }

    @Test
    void a_rule_that_is_not_in_the_book_has_no_page() {
        assertThatThrownBy(() -> new RuleBook(English.LANGUAGE).page("crooked-hem"))
                .isInstanceOf(NoSuchElementException.class)
                .hasMessage("no rule is called 'crooked-hem'");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_part_of_a_page_is_written(RulePage page) {
        assertThat(List.of(page.title(), page.law(), page.why()))
                .allSatisfy(part -> assertThat(part).hasSizeGreaterThan(7).doesNotContain("TODO", "{"));
        assertThat(page.law()).endsWith(".");
        assertThat(page.why()).endsWith(".");
        assertThat(page.source()).containsPattern("https?://|Common practice, no source|Derived from the geometry");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void the_failing_chart_has_exactly_the_finding_that_is_marked(RulePage page) {
        Sketches.assertFound(page.fails().text());
        assertThat(page.fails().verdict().findings()).extracting(Finding::rule).containsExactly(page.id());
    }

    @ParameterizedTest
    @MethodSource("pages")
    void the_passing_chart_has_no_finding(RulePage page) {
        assertThat(page.passes().verdict().findings()).isEmpty();
        Sketches.assertFound(page.passes().text());
    }

    @ParameterizedTest
    @MethodSource("pages")
    void the_two_charts_differ_by_what_the_page_says(RulePage page) {
        assertThat(differences(page.fails(), page.passes())).isEqualTo(page.changes());
    }

    @ParameterizedTest
    @MethodSource("pages")
    void the_failing_chart_is_the_smallest_since_nothing_can_be_left_out(RulePage page) {
        assertThat(smaller(page.failing())).noneSatisfy(chart -> {
            Verdict verdict = page.fails()
                    .sides()
                    .map(sides -> Checker.check(chart, sides))
                    .orElseGet(() -> Checker.check(chart));
            assertThat(verdict.findings()).extracting(Finding::rule).containsExactly(page.id());
        });
    }

    /** Stitches, yarns, settings and sides that differ; a stitch more or less is one difference. */
    private static int differences(Sketch one, Sketch two) {
        Chart a = one.chart();
        Chart b = two.chart();
        int count = Math.abs(a.rounds().size() - b.rounds().size());
        for (int r = 1; r <= Math.min(a.rounds().size(), b.rounds().size()); r++) {
            count += differences(a.round(r), b.round(r));
        }
        Rules rules = a.rules();
        count += rules.stackLongStitches() == b.rules().stackLongStitches() ? 0 : 1;
        count += rules.landOnCornerChain() == b.rules().landOnCornerChain() ? 0 : 1;
        count += rules.looseRun() == b.rules().looseRun() ? 0 : 1;
        count += (int)
                a.yarns().stream().filter(yarn -> !b.yarns().contains(yarn)).count();
        for (Side side : Side.values()) {
            count += one.sides().map(s -> s.get(side)).equals(two.sides().map((PerSide<Integer> s) -> s.get(side)))
                    ? 0
                    : 1;
        }
        return count;
    }

    private static int differences(Round one, Round two) {
        int count = one.yarn().equals(two.yarn()) ? 0 : 1;
        for (Section section : Section.values()) {
            String a = one.section(section).letters();
            String b = two.section(section).letters();
            count += Math.abs(a.length() - b.length());
            for (int i = 0; i < Math.min(a.length(), b.length()); i++) {
                count += a.charAt(i) == b.charAt(i) ? 0 : 1;
            }
        }
        return count;
    }

    /** The chart with any one round or any one column less. */
    private static List<Chart> smaller(Chart chart) {
        List<Chart> smaller = new ArrayList<>();
        int last = chart.rounds().size();
        if (!chart.raggedSections().isEmpty()) { // of such a chart only the outermost round can go
            return List.of(Edits.deleteRounds(chart, last, last));
        }
        for (int r = 1; r <= last && last > 1; r++) {
            smaller.add(Edits.deleteRounds(chart, r, r));
        }
        SideShape shape = chart.shape(Side.FIRST);
        for (int place = 1; place <= shape.w() && shape.w() > 1; place++) {
            smaller.add(Edits.deleteColumn(chart, Section.REPEAT, place));
        }
        for (int place = 1; place <= shape.length(Section.FROM_CORNER, last) && shape.a() > 0; place++) {
            smaller.add(Edits.deleteColumn(chart, Section.FROM_CORNER, place));
        }
        for (int place = 1; place <= shape.length(Section.TO_CORNER, last) && shape.b() > 0; place++) {
            smaller.add(Edits.deleteColumn(chart, Section.TO_CORNER, place));
        }
        return smaller;
    }
}
