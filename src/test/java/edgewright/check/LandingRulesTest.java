package edgewright.check;

import static edgewright.testing.Sketches.assertFound;

import org.junit.jupiter.api.Test;

/**
 * Where a long stitch can land. That it drops into the front loop two rounds below, of its own colour:
 * https://www.gyho.co.uk/mosaiccrochetrules and https://hobbyistontheroad.com/category/projects-advice/page/2/ ; what follows
 * at the corners: derived from the geometry.
 */
class LandingRulesTest {

    @Test
    void a_border_of_long_stitches_two_rounds_apart_can_be_worked() {
        assertFound("""
                5 A bbbbl|bbbb|lbbbb
                4 B  bbbb|bblb|bbbb
                3 A   bbb|lbbb|bbb
                2 B    bl|bbbb|lb
                1 A     b|bbbb|b
                """);
    }

    @Test
    void round_1_has_nothing_to_land_on_not_even_at_its_ends() {
        assertFound("""
                2 B bb|bb|bb
                1 A  l|bl|l
                     ^  ^ ^ no-round-below
                """);
    }

    @Test
    void round_2_lands_on_the_base_round_and_in_its_corner_chains() {
        assertFound("""
                2 B bl|lb|lb
                1 A  b|bb|b
                """);
    }

    @Test
    void the_first_and_last_of_a_side_land_nowhere_and_nothing_else_is_said_of_them() {
        assertFound("""
                looseRun 1
                landOnCornerChain false
                4 B lbbb|bb|bbbl
                    ^          ^ past-corner
                3 B  lbb|bb|bbl
                     ^        ^ past-corner
                2 A   lb|bb|bl
                      ^      ^ past-corner
                1 B    b|bb|b
                """);
    }

    @Test
    void the_second_and_last_but_one_land_in_a_corner_chain_of_any_round() {
        assertFound("""
                landOnCornerChain false
                4 B bbbb|bb|bblb
                              ^ lands-on-corner-chain
                3 A  bbb|bb|bbb
                2 B   bl|bb|lb
                       ^    ^ lands-on-corner-chain
                1 A    b|bb|b
                """);
        assertFound("""
                landOnCornerChain true
                4 B bbbb|bb|bblb
                3 A  bbb|bb|bbb
                2 B   bl|bb|lb
                1 A    b|bb|b
                """);
    }

    @Test
    void a_long_stitch_hides_the_loop_from_the_one_directly_above_in_every_section() {
        assertFound("""
                3 A bbl|bl|lbb
                      ^  ^ ^ covered-loop
                2 B  bl|bl|lb
                1 A   b|bb|b
                """);
    }

    @Test
    void a_plain_stitch_leaves_no_loop_for_the_one_directly_above_in_every_section() {
        assertFound("""
                3 A bbl|bl|lbb
                      ^  ^ ^ used-loop
                2 B  bp|bp|pb
                1 A   b|bb|b
                """);
    }

    @Test
    void a_plain_stitch_can_be_landed_on() {
        assertFound("""
                3 A bbl|bl|lbb
                2 B  bb|bb|bb
                1 A   p|bp|p
                """);
    }

    @Test
    void a_long_stitch_passes_in_front_of_a_chain() {
        assertFound("""
                3 A bbbl|bl|lbbb
                2 B  bbc|bc|cbb
                1 A   bb|bb|bb
                """);
    }

    @Test
    void a_chain_inside_the_side_cannot_be_landed_on_in_any_section() {
        assertFound("""
                3 A bbbl|bl|lbbb
                       ^  ^ ^ lands-on-chain
                2 B  bbb|bb|bbb
                1 A   bc|bc|cb
                """);
    }

    @Test
    void long_stitches_are_stacked_only_where_the_chart_allows_it() {
        assertFound("""
                4 B bbbbl|lb|bbbb
                        ^ ^ lands-on-long
                3 A  bbbb|bb|bbb
                2 B   bbl|lb|bb
                1 A    bb|bb|b
                """);
        assertFound("""
                stackLongStitches true
                4 B bbbbl|lb|bbbb
                3 A  bbbb|bb|bbb
                2 B   bbl|lb|bb
                1 A    bb|bb|b
                """);
    }

    @Test
    void a_stitch_breaks_every_rule_that_it_breaks() {
        assertFound("""
                C Rust #a9502f
                4 C bbbb|lb|bbbb
                         ^ covered-loop, lands-on-long, other-yarn
                3 A  bbb|lb|bbb
                         ^ covered-loop, other-yarn
                2 B   bb|lb|bb
                1 C    b|bb|b
                """);
    }

    @Test
    void what_stands_directly_below_counts_for_the_second_stitch_of_a_side_too() {
        assertFound("""
                landOnCornerChain false
                3 A blb|bb|blb
                     ^ used-loop, lands-on-corner-chain
                            ^ covered-loop, lands-on-corner-chain
                2 B  pb|bb|bl
                            ^ past-corner
                1 A   b|bb|b
                """);
    }
}
