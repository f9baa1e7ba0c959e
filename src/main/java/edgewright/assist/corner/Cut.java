package edgewright.assist.corner;

/**
 * One way to carry a tile on to the corners.
 *
 * @param a the stitches from the corner in the base round; {@code b} those to the corner
 * @param shift by how many places every stitch of the repeat is moved on; 0 or more, and less than the repeat
 */
record Cut(CornerKind kind, int a, int b, int shift) {

    /**
     * The column of the tile that a place on the arm from the corner takes.
     *
     * @param away how many cells from the corner chain, 1 being the first stitch of the side
     */
    int fromColumn(int round, int away) {
        return kind == CornerKind.MIRROR_FROM && away <= a + round
                ? straightTo(round, away)
                : straightFrom(round, away);
    }

    /** The same for the arm to the corner, 1 being the last stitch of the side. */
    int toColumn(int round, int away) {
        return kind == CornerKind.MIRROR_TO && away <= b + round ? straightFrom(round, away) : straightTo(round, away);
    }

    /** 1 where the columns of the tile go on away from the corner chain of an arm, -1 where they come towards it. */
    int direction(int arm, int round, int away) {
        boolean mirrored = arm == Arms.FROM
                ? kind == CornerKind.MIRROR_FROM && away <= a + round
                : kind == CornerKind.MIRROR_TO && away <= b + round;
        return (arm == Arms.FROM) == mirrored ? -1 : 1;
    }

    /** The column with which the tile would run on over the corner, past the last stitch of the side and the corner chain. */
    int runOn(int round, int away) {
        return toColumn(round, 1) + 1 + away;
    }

    private int straightFrom(int round, int away) {
        return away - 1 - (a + round) - shift;
    }

    private int straightTo(int round, int away) {
        return b + round - away - shift;
    }
}
