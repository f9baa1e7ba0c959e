package edgewright.draw.paint;

/**
 * A frame of reference laid on the paper: where its zero lies, and which way and how far one unit of each axis goes.
 *
 * <p>The marks of a stitch are made in the frame of its cell, one cell wide: zero in the middle, the first axis along the way
 * of working, the second away from the piece. So one description serves both arms and every rotation.
 *
 * @param alongXMm how far right one unit of the first axis goes
 * @param alongYMm how far down one unit of the first axis goes
 * @param outXMm how far right one unit of the second axis goes
 * @param outYMm how far down one unit of the second axis goes
 */
public record Frame(double zeroXMm, double zeroYMm, double alongXMm, double alongYMm, double outXMm, double outYMm) {

    /**
     * The frame of a cell.
     *
     * @param quarters which way the side is worked as it is drawn: 0 leftwards, with the piece below, and so on anticlockwise
     */
    public static Frame of(int quarters, double middleXMm, double middleYMm, double cellMm) {
        return switch (quarters) {
            case 0 -> new Frame(middleXMm, middleYMm, -cellMm, 0, 0, -cellMm);
            case 1 -> new Frame(middleXMm, middleYMm, 0, cellMm, -cellMm, 0);
            case 2 -> new Frame(middleXMm, middleYMm, cellMm, 0, 0, cellMm);
            case 3 -> new Frame(middleXMm, middleYMm, 0, -cellMm, cellMm, 0);
            default -> throw new IllegalArgumentException(quarters + " quarters");
        };
    }

    /** A frame that lies as the paper does, moved by so much. */
    public static Frame moved(double rightMm, double downMm) {
        return new Frame(rightMm, downMm, 1, 0, 0, 1);
    }

    /** This frame as in an upright mirror that stands at its zero. */
    public Frame mirrored() {
        return new Frame(zeroXMm, zeroYMm, -alongXMm, alongYMm, -outXMm, outYMm);
    }

    /** How far right on the paper a point of this frame lies. */
    public double xMm(double along, double out) {
        return zeroXMm + along * alongXMm + out * outXMm;
    }

    /** How far down on the paper a point of this frame lies. */
    public double yMm(double along, double out) {
        return zeroYMm + along * alongYMm + out * outYMm;
    }
}
