package edgewright.words.tree;

import edgewright.chart.Corner;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * The instructions for one round of a back layer: the same stitch in every stitch, and at each corner some into the chains
 * below, on either side of the new chains. All four sides are worked alike.
 *
 * @param number counted outwards from 1
 * @param frontRound the round of the front that it is said to match stitch for stitch, where the pattern says so
 * @param side what is said of the stitches on a side
 * @param height which stitch it is worked in
 * @param atEachArm the stitches worked into the corner below before the new chains, and again after them; 1 or more
 * @param cornerChains the chains of each corner, 1 to 3
 */
public record BackRound(
        int number, OptionalInt frontRound, SideSize side, Height height, int atEachArm, int cornerChains) {
    /** The two stitches that a back layer is worked in. */
    public enum Height {
        /** As high as two rounds of the front. */
        TALL,
        /** As high as one round of the front: the plain stitch, through both loops. */
        LOW
    }

    public BackRound {
        Objects.requireNonNull(frontRound);
        Objects.requireNonNull(side);
        Objects.requireNonNull(height);
        if (number < 1 || atEachArm < 1) {
            throw new IllegalArgumentException("back round " + number + ", " + atEachArm + " stitches at an arm");
        }
        Corner.requireChains(cornerChains);
    }
}
