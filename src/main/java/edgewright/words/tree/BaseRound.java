package edgewright.words.tree;

import edgewright.chart.Corner;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * What a pattern says of round 0, which is on the piece before the border begins.
 *
 * @param side what is said of the stitches on a side
 * @param fewest the fewest stitches a side may have, where the pattern says so; corner chains not counted. Said of a
 *     multiple only, not of a given size
 * @param cornerChains the chains of each corner, 1 to 3, where the pattern says so
 */
public record BaseRound(SideSize side, OptionalInt fewest, OptionalInt cornerChains) {
    /** Nothing is said of the base round. */
    public static final BaseRound UNSTATED =
            new BaseRound(SideSize.unstated(), OptionalInt.empty(), OptionalInt.empty());

    public BaseRound {
        Objects.requireNonNull(side);
        if (fewest.isPresent() && fewest.getAsInt() < 0) {
            throw new IllegalArgumentException("at least " + fewest.getAsInt() + " stitches");
        }
        if (fewest.isPresent() && !(side instanceof SideSize.OfMultiple)) {
            throw new IllegalArgumentException("the fewest stitches are said of a multiple only");
        }
        cornerChains.ifPresent(Corner::requireChains);
    }
}
