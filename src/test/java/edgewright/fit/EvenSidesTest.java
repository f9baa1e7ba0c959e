package edgewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.BorderShape;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EvenSidesTest {
    private static final SideShape SHAPE = new SideShape(3, 5, 1);

    @Test
    void a_design_closes_on_sides_of_whole_repeats() {
        assertThat(EvenSides.of(BorderShape.of(SHAPE), 3, PerSide.of(35, 50, 40, 10)))
                .isEqualTo(new EvenSides.Closes(PerSide.of(5, 8, 6, 0)));
    }

    @Test
    void sides_shorter_than_the_corner_sections_are_named() {
        assertThat(EvenSides.of(BorderShape.of(SHAPE), 3, PerSide.of(35, 9, 35, 0)))
                .isEqualTo(new EvenSides.TooShort(List.of(Side.LEFT, Side.RIGHT), 10));
    }

    @Test
    void where_all_sides_miss_alike_other_corner_sections_would_close() {
        // 36 = 10 + 5 * 5 + 1: with A + B one longer it closes, or with A + B four shorter.
        assertThat(EvenSides.of(BorderShape.of(SHAPE), 3, PerSide.pairs(36, 51)))
                .isEqualTo(new EvenSides.CornersMiss(1, OptionalInt.of(4)));
        assertThat(new SideShape(4, 5, 1).closes(3, 36)).isTrue();
        assertThat(new SideShape(0, 5, 0).closes(3, 51)).isTrue();
    }

    @Test
    void corner_sections_are_never_to_be_made_shorter_than_nothing() {
        // A + B = 4 and 37 = 10 + 5 * 5 + 2: two longer, or three shorter. With A + B = 1 only longer ones are left.
        assertThat(EvenSides.of(BorderShape.of(SHAPE), 3, PerSide.all(37)))
                .isEqualTo(new EvenSides.CornersMiss(2, OptionalInt.of(3)));
        assertThat(EvenSides.of(BorderShape.of(new SideShape(1, 5, 0)), 3, PerSide.all(34)))
                .isEqualTo(new EvenSides.CornersMiss(2, OptionalInt.empty()));
    }

    @Test
    void where_sides_differ_by_no_multiple_of_the_repeat_only_other_widths_could_close() {
        assertThat(EvenSides.of(BorderShape.of(SHAPE), 3, PerSide.of(30, 36, 30, 42)))
                .isEqualTo(new EvenSides.SidesDiffer(Side.LEFT, 6, List.of(6, 3, 2, 1)));
    }

    @Test
    void what_is_said_holds_for_every_design_with_other_corners_or_another_repeat() {
        Random random = new Random(7);
        for (int i = 0; i < 2_000; i++) {
            SideShape shape = new SideShape(random.nextInt(3), 1 + random.nextInt(8), random.nextInt(3));
            PerSide<Integer> sides = PerSide.each(side -> 20 + random.nextInt(20));
            EvenSides closing = EvenSides.of(BorderShape.of(shape), 2, sides);
            boolean cornersHelp = IntStream.range(0, shape.w())
                    .anyMatch(longer -> closes(new SideShape(shape.a() + longer, shape.w(), shape.b()), sides));
            assertThat(closing instanceof EvenSides.Closes).isEqualTo(closes(shape, sides));
            assertThat(closing instanceof EvenSides.SidesDiffer).isEqualTo(!cornersHelp);
            if (closing instanceof EvenSides.CornersMiss miss) {
                assertThat(closes(new SideShape(shape.a() + miss.longer(), shape.w(), shape.b()), sides))
                        .isTrue();
                int shorter = shape.w() - miss.longer();
                assertThat(miss.shorter())
                        .isEqualTo(shorter <= shape.a() + shape.b() ? OptionalInt.of(shorter) : OptionalInt.empty());
            }
            if (closing instanceof EvenSides.SidesDiffer differ) {
                assertThat(differ.widths())
                        .isEqualTo(IntStream.iterate(40, width -> width >= 1, width -> width - 1)
                                .filter(width -> someCornersClose(width, sides))
                                .boxed()
                                .toList());
            }
        }
    }

    private static boolean someCornersClose(int width, PerSide<Integer> sides) {
        // Remainders of a large multiple, so that no side is too short for any of the corners tried.
        return IntStream.range(0, width)
                .anyMatch(corners -> sides.stream().allMatch(s -> Math.floorMod(s - corners, width) == 0));
    }

    private static boolean closes(SideShape shape, PerSide<Integer> sides) {
        return sides.stream().allMatch(stitches -> shape.closes(2, stitches));
    }
}
