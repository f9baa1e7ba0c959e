package edgewright.check;

import static edgewright.testing.Sketches.assertFound;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.testing.Sketches;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Long stitches side by side. That they leave loose flaps: https://ashleeslint.com/2021/07/06/mosaic-locked-double-crochet/ ;
 * the number is the chart's.
 */
class LooseRunTest {

    @Test
    void nine_in_a_row_pass_and_ten_do_not_unless_the_chart_says_otherwise() {
        assertFound("""
                2 B bb|lllllllllb|bb
                1 A  b|bbbbbbbbbb|b
                """);
        assertFound("""
                2 B bb|bllllllllll|bb
                        ^ loose-run
                1 A  b|bbbbbbbbbbb|b
                """);
        assertFound("""
                looseRun 10
                2 B bb|bllllllllll|bb
                1 A  b|bbbbbbbbbbb|b
                """);
    }

    @Test
    void a_run_goes_on_from_the_last_repeat_into_the_next() {
        assertRuns("""
                looseRun 3
                2 B bb|llbll|bb
                          ^ loose-run
                1 A  b|bbbbb|b
                """, 4);
    }

    @Test
    void a_run_goes_on_over_both_seams() {
        assertRuns("""
                looseRun 3
                2 B bbbll|llbbll|llbbb
                       ^      ^ loose-run
                1 A  bbbb|bbbbbb|bbbb
                """, 4, 4);
    }

    @Test
    void with_no_repeat_the_corner_sections_meet() {
        assertRuns("""
                looseRun 3
                2 B bbll|b|llbb
                      ^ loose-run
                1 A  bbb|b|bbb
                """, 4);
    }

    @Test
    void a_run_is_as_long_as_it_gets_for_any_number_of_repeats() {
        assertRuns("""
                looseRun 3
                2 B bll|lbb|lllb
                     ^ loose-run
                1 A  bb|bbb|bbb
                """, 5);
    }

    @Test
    void a_part_of_a_run_is_not_told_twice() {
        assertRuns("""
                looseRun 3
                2 B bb|bl|llllb
                        ^ loose-run
                1 A  b|bb|bbbb
                """, 5);
    }

    @Test
    void a_repeat_that_is_all_long_is_one_run_without_an_end() {
        assertRuns("""
                2 B bb|ll|bb
                       ^ loose-run
                1 A  b|bb|b
                """, 0);
        assertRuns("""
                2 B bbl|l|lb
                      ^ loose-run
                1 A  bb|b|b
                """, 0);
    }

    @Test
    void runs_inside_a_section_are_told_one_by_one() {
        assertRuns("""
                looseRun 1
                2 B bllblll|blllb|bllb
                     ^  ^    ^     ^ loose-run
                1 A  bbbbbb|bbbbb|bbb
                """, 2, 3, 3, 2);
    }

    @Test
    void stitches_with_nothing_to_land_on_are_in_no_run() {
        assertFound("""
                looseRun 2
                3 A lllb|b|bbb
                    ^ past-corner
                2 B  bbb|b|bb
                1 A   bl|b|l
                       ^   ^ no-round-below
                """);
    }

    private static void assertRuns(String sketch, int... lengths) {
        assertFound(sketch);
        Chart chart = Sketches.chart(sketch);
        List<OptionalInt> expected = Arrays.stream(lengths)
                .mapToObj(length -> length == 0 ? OptionalInt.empty() : OptionalInt.of(length))
                .toList();
        assertThat(Checker.check(chart).findings())
                .extracting(finding -> ((Violation.LooseRun) finding.violation()).length())
                .containsExactlyElementsOf(expected);
    }
}
