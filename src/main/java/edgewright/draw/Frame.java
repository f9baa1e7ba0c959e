package edgewright.draw;

/**
 * A frame of reference laid on the paper: where its zero lies, and which way and how far one unit of each axis goes.
 *
 * <p>The marks of a stitch are made in the frame of its cell, one cell wide: zero in the middle, the first axis along the way
 * of working, the second away from the piece. So one description serves both limbs and every turn.
 *
 * @param alongXMm how far right one unit of the first axis goes
 * @param alongYMm how far down one unit of the first axis goes
 * @param outXMm how far right one unit of the second axis goes
 * @param outYMm how far down one unit of the second axis goes
 */
record Frame(double zeroXMm, double zeroYMm, double alongXMm, double alongYMm, double outXMm, double outYMm) {

    /** How far right on the paper a point of this frame lies. */
    double xMm(double along, double out) {
        return zeroXMm + along * alongXMm + out * outXMm;
    }

    /** How far down on the paper a point of this frame lies. */
    double yMm(double along, double out) {
        return zeroYMm + along * alongYMm + out * outYMm;
    }
}
