package edgewright.check;

import static edgewright.testing.Sketches.assertFound;

import org.junit.jupiter.api.Test;

/** Chains inside a side. Common practice, no source; at the corners: derived from the geometry. */
class ChainRulesTest {

    @Test
    void a_chain_cannot_begin_or_end_a_side() {
        assertFound("""
                2 B cb|cb|bc
                    ^      ^ chain-at-corner
                1 A  c|bb|c
                     ^    ^ chain-at-corner
                """);
    }

    @Test
    void a_chain_directly_above_a_chain_leaves_a_deep_gap_in_every_section() {
        assertFound("""
                4 B bbbc|bc|cbbb
                       ^  ^ ^ deep-gap
                3 A  bbc|bc|cbb
                       ^  ^ ^ deep-gap
                2 B   bc|bc|cb
                1 A    b|bb|b
                """);
    }

    @Test
    void a_chain_above_a_corner_chain_is_no_deep_gap() {
        assertFound("""
                2 B bb|b|bc
                          ^ chain-at-corner
                1 A  b|b|b
                """);
    }

    @Test
    void a_chain_above_a_chain_at_the_corner_is_a_deep_gap() {
        assertFound("""
                2 B bc|b|bb
                     ^ deep-gap
                1 A  c|b|b
                     ^ chain-at-corner
                """);
    }

    @Test
    void chains_two_rounds_apart_are_no_deep_gap() {
        assertFound("""
                3 A bbb|cb|bbb
                2 B  bb|bb|bb
                1 A   b|cb|b
                """);
    }
}
