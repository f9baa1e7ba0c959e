package edgewright.fit;

import edgewright.chart.BorderShape;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Whether a design goes round a piece whose sides have exactly these stitches, and why not.
 *
 * <p>With enough stitches any design goes round any rectangle, if stitches may be added or lost. It is exact counts that can
 * shut a design out, in three ways: a side is too short for the corner sections; all sides miss by the same number, so that
 * other corner sections would do; or two sides differ by a number that is no multiple of the repeat, and then no corner
 * sections help.
 */
public sealed interface EvenSides {
    /** Every side closes. */
    record Closes(PerSide<Integer> repeats) implements EvenSides {}

    /**
     * These sides are shorter than the corner sections alone.
     *
     * @param sides in working order
     * @param fewest A + B + 2R, the stitches that a side must have at the least
     */
    record TooShort(List<Side> sides, int fewest) implements EvenSides {
        public TooShort {
            sides = List.copyOf(sides);
        }
    }

    /**
     * Every side misses by the same number. The design would close on this piece if its corner sections together were so
     * many stitches longer or so many shorter.
     *
     * @param longer 1 to w - 1
     * @param shorter {@code w - longer}; empty if the corner sections together have fewer stitches than that
     */
    record CornersMiss(int longer, OptionalInt shorter) implements EvenSides {}

    /**
     * Two sides differ by a number that is no multiple of the repeat: whatever the corner sections are, one of them cannot
     * close.
     *
     * @param side the first side, in working order, that differs so from the top
     * @param difference how many stitches it is longer or shorter than the top
     * @param widths the widths of repeat that every two sides of this piece differ by a multiple of, widest first; a design
     *     of such a width can be made to close
     */
    record SidesDiffer(Side side, int difference, List<Integer> widths) implements EvenSides {
        public SidesDiffer {
            widths = List.copyOf(widths);
        }
    }

    /**
     * Judges sides with these stitches in that round, corner chains not counted. What is said first of several is what
     * stands first in the list above.
     */
    static EvenSides of(BorderShape border, int round, PerSide<Integer> stitches) {
        int fewest = border.fewestStitches(round);
        List<Side> shorts = Side.where(side -> stitches.get(side) < fewest);
        if (!shorts.isEmpty()) {
            return new TooShort(shorts, fewest);
        }
        List<Side> apart = Side.where(side -> (stitches.get(side) - stitches.get(Side.FIRST))
                        % border.on(side).w()
                != 0);
        if (!apart.isEmpty()) {
            Side side = apart.get(0);
            return new SidesDiffer(side, Math.abs(stitches.get(side) - stitches.get(Side.FIRST)), widths(stitches));
        }
        SideShape shape = border.on(Side.FIRST);
        int longer = shape.toLose(round, stitches.get(Side.FIRST)).orElseThrow();
        if (longer == 0) {
            return new Closes(border.repeats(round, stitches).orElseThrow());
        }
        int shorter = shape.w() - longer;
        return new CornersMiss(
                longer, shorter <= shape.a() + shape.b() ? OptionalInt.of(shorter) : OptionalInt.empty());
    }

    private static List<Integer> widths(PerSide<Integer> stitches) {
        int common = stitches.map(count -> Math.abs(count - stitches.get(Side.FIRST))).stream()
                .reduce(0, EvenSides::greatestCommonDivisor);
        List<Integer> widths = new ArrayList<>();
        IntStream.rangeClosed(1, common).filter(width -> common % width == 0).forEach(width -> widths.add(0, width));
        return widths;
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
