package edgewright.check;

import static edgewright.testing.Sketches.assertFound;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PerSide;
import edgewright.testing.Sketches;
import edgewright.texts.English;
import org.junit.jupiter.api.Test;

/** Sections of the wrong length, and sides that do not close. */
class LengthRulesTest {

    /** Two stitches more a side every round: https://issuhub.com/view/index/22092?pageIndex=63 (155, 157, 159). */
    @Test
    void sections_that_do_not_grow_with_their_round_are_all_told_and_nothing_else_is() {
        assertFound("""
                3 A bbb|llb|bbbb
                ! repeat ragged-section
                ! toCorner ragged-section
                2 B   l|ll|lb
                ! fromCorner ragged-section
                1 A   l|bb|b
                """);
    }

    @Test
    void a_section_may_even_be_empty() {
        assertFound("""
                2 B  ||
                ! fromCorner ragged-section
                ! repeat ragged-section
                ! toCorner ragged-section
                1 A b|b|b
                """);
    }

    @Test
    void a_ragged_chart_is_not_judged_and_says_so() {
        Verdict ragged = Checker.check(Sketches.chart("""
                2 B bb|l|b
                1 A  b|b|b
                """));
        assertThat(ragged.judged()).isFalse();
        assertThat(ragged.longStitchesJudged()).isZero();
        assertThat(ragged.hasErrors()).isTrue();
    }

    @Test
    void a_ragged_chart_is_not_asked_whether_its_sides_close() {
        assertFound("""
                sides 3,5
                2 B bb|bb|b
                ! toCorner ragged-section
                1 A  b|bb|b
                """);
    }

    /** 'Multiple of 4 plus 1': http://www.pressreader.com/australia/simply-crochet/20170622/283012579888609 */
    @Test
    void a_side_closes_with_the_corner_sections_and_a_whole_number_of_repeats() {
        assertFound("""
                sides 1,5,21,401
                1 A b|bbbb|bb
                """);
        assertFound("""
                sides 2,20,4,0
                ! TOP unclosed-side
                ! LEFT unclosed-side
                ! BOTTOM unclosed-side
                ! RIGHT unclosed-side
                1 A b|bbbb|bb
                """);
    }

    @Test
    void a_side_that_misses_says_by_how_many_stitches() {
        Verdict verdict = Checker.check(Sketches.chart("""
                        1 A bbb|bbbb|bb
                        """), PerSide.of(10, 2, 11, 13));
        assertThat(verdict.findings().stream()
                        .map(finding -> new FindingSentences(English.LANGUAGE)
                                .of(finding)
                                .replaceAll("^.*whole, ", "")))
                .containsExactly("3 too many or 1 too few.", "1 too few.", "2 too many or 2 too few.");
    }

    @Test
    void a_chart_that_is_not_made_for_a_piece_is_checked_for_all() {
        Verdict verdict = Checker.check(Sketches.chart("""
                1 A b|bbbb|bb
                """));
        assertThat(verdict.findings()).isEmpty();
        assertThat(verdict.baseStitches()).isEmpty();
    }
}
