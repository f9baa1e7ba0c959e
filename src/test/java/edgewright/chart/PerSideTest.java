package edgewright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PerSideTest {
    private static final PerSide<String> NAMES = PerSide.of("top", "left", "bottom", "right");

    @Test
    void each_side_has_its_own_value_and_all_come_in_working_order() {
        assertThat(NAMES.stream()).containsExactly("top", "left", "bottom", "right");
        for (Side side : Side.values()) {
            assertThat(NAMES.get(side)).isEqualToIgnoringCase(side.name());
            PerSide<String> changed = NAMES.with(side, "x");
            assertThat(changed.get(side)).isEqualTo("x");
            assertThat(changed.with(side, NAMES.get(side))).isEqualTo(NAMES);
        }
        assertThat(PerSide.each(side -> side)).isEqualTo(PerSide.of(Side.TOP, Side.LEFT, Side.BOTTOM, Side.RIGHT));
        assertThat(NAMES.map(String::length)).isEqualTo(PerSide.of(3, 4, 6, 5));
    }

    @Test
    void sides_are_alike_by_what_they_hold_and_not_by_which_object_it_is() {
        assertThat(PerSide.of(1000, 2000, 1000, 2000).oppositeSidesAreAlike()).isTrue();
        assertThat(PerSide.of(1000, 2000, 1000, 2001).oppositeSidesAreAlike()).isFalse();
        assertThat(PerSide.of(1000, 2000, 1001, 2000).oppositeSidesAreAlike()).isFalse();
        assertThat(PerSide.pairs(1000, 2000)).isEqualTo(PerSide.of(1000, 2000, 1000, 2000));
        assertThat(PerSide.pairs(1000, 2000).allSidesAreAlike()).isFalse();
        assertThat(PerSide.pairs(1000, 1000).allSidesAreAlike()).isTrue();
        assertThat(PerSide.of(1000, 1000, 1000, 1001).allSidesAreAlike()).isFalse();
    }

    @Test
    void four_sides_together_may_be_more_than_an_int_holds() {
        assertThat(PerSide.sum(PerSide.all(Integer.MAX_VALUE))).isEqualTo(4L * Integer.MAX_VALUE);
    }

    @Test
    void the_sides_that_hold_something_are_told_in_working_order() {
        assertThat(Side.where(Side::isLevel)).containsExactly(Side.TOP, Side.BOTTOM);
        assertThat(Side.where(side -> NAMES.get(side).length() > 4)).containsExactly(Side.BOTTOM, Side.RIGHT);
    }

    @Test
    void numbers_are_typed_as_they_are_read() {
        assertThat(PerSide.typed(PerSide.of(29, 41, 29, 41))).isEqualTo("29, 41");
        assertThat(PerSide.typed(PerSide.of(29, 41, 29, 42))).isEqualTo("29, 41, 29, 42");
        assertThat(PerSide.parse(PerSide.typed(PerSide.all(7)))).isEqualTo(PerSide.all(7));
    }

    @Test
    void a_side_stands_between_the_one_before_and_the_one_after_and_across_from_its_opposite() {
        for (Side side : Side.values()) {
            assertThat(side.next().previous()).isEqualTo(side);
            assertThat(side.opposite().opposite()).isEqualTo(side);
            assertThat(side.opposite().isLevel()).isEqualTo(side.isLevel());
        }
        assertThat(Side.FIRST.previous()).isEqualTo(Side.RIGHT);
        assertThat(HookHand.RIGHT.workingOrder()).containsExactly(Side.TOP, Side.LEFT, Side.BOTTOM, Side.RIGHT);
        assertThat(HookHand.LEFT.workingOrder()).containsExactly(Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT);
    }

    @Test
    void no_side_is_without_a_value() {
        assertThatThrownBy(() -> PerSide.of(1, 2, null, 4)).isInstanceOf(NullPointerException.class);
    }
}
