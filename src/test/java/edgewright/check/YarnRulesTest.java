package edgewright.check;

import static edgewright.testing.Sketches.assertFound;

import org.junit.jupiter.api.Test;

/** What depends on the yarn of a round. */
class YarnRulesTest {

    /** Own colour: https://hobbyistontheroad.com/category/projects-advice/page/2/ */
    @Test
    void a_long_stitch_over_a_round_of_another_yarn_is_warned_of_corner_chains_included() {
        assertFound("""
                C Rust #a9502f
                4 B bbbb|bb|bbbb
                3 C  bll|lb|bbb
                      ^^ ^ other-yarn
                2 B   bb|bb|bb
                1 A    b|bb|b
                """);
    }

    @Test
    void nothing_is_said_of_a_long_stitch_on_the_base_round_or_past_the_corner() {
        assertFound("""
                C Rust #a9502f
                3 C lbb|bb|bbl
                    ^        ^ past-corner
                2 B  bl|lb|bb
                1 A   b|bb|b
                """);
    }

    @Test
    void only_the_yarns_of_the_two_rounds_count_and_not_their_colours() {
        assertFound("""
                C Other Peat #2b2a33
                3 C bbb|lb|bbb
                        ^ other-yarn
                2 B  bb|bb|bb
                1 A   b|bb|b
                """);
    }

    @Test
    void two_yarns_hard_to_tell_apart_are_warned_of_once_where_they_first_meet() {
        assertFound("""
                C Fog #e4dccb
                6 C bbbbbb|b|bbbbbb
                5 B  bbbbb|b|bbbbb
                4 C   bbbb|b|bbbb
                ! low-contrast
                3 B    bbb|b|bbb
                2 A     bb|b|bb
                1 C      b|b|b
                """);
    }

    @Test
    void every_pair_of_yarns_is_a_warning_of_its_own() {
        assertFound("""
                C Fog #e4dccb
                D Mud #3f3d46
                4 D bbbb|b|bbbb
                ! low-contrast
                3 A  bbb|b|bbb
                2 B   bb|b|bb
                ! low-contrast
                1 C    b|b|b
                """);
    }

    @Test
    void yarns_that_never_meet_may_be_alike() {
        assertFound("""
                C Fog #e4dccb
                3 C bbb|b|bbb
                2 A  bb|b|bb
                1 B   b|b|b
                """);
    }
}
