package edgewright.fit;

/**
 * The two heights of stitch that a back layer is worked in. Source of the tall one and its corners: common practice; a corner
 * of two stitches at each arm makes a side four stitches longer, as published in
 * https://crochetbouquet.co.uk/pages/week-three-square-ten-solid-square
 */
public enum BackStitch {
    /** As high as two rounds of the front; two stitches at each arm of a corner. */
    TALL(2),
    /** As high as one round of the front; one stitch at each arm of a corner. */
    SHORT(1);

    private final int frontRounds;

    BackStitch(int frontRounds) {
        this.frontRounds = frontRounds;
    }

    /** How many rounds of the front one round is as high as. */
    public int frontRounds() {
        return frontRounds;
    }

    /** The stitches worked into the corner below before the corner chains, and again after them. */
    public int atEachArm() {
        return frontRounds;
    }

    /** How many stitches longer than the round before each side is. */
    public int growth() {
        return 2 * atEachArm();
    }
}
