package edgewright.fit;

/**
 * What a swatch in the border's own stitches measures.
 *
 * @param stitchesIn10Cm the stitches side by side in ten centimetres; above 0
 * @param roundsIn10Cm the rounds (of a flat swatch: rows) above each other in ten centimetres; above 0
 */
public record Swatch(double stitchesIn10Cm, double roundsIn10Cm) {
    private static final double MM_IN_10_CM = 100;

    public Swatch {
        requirePositive(stitchesIn10Cm, "stitches in 10 cm");
        requirePositive(roundsIn10Cm, "rounds in 10 cm");
    }

    /** The width of a stitch. */
    public double stitchMm() {
        return MM_IN_10_CM / stitchesIn10Cm;
    }

    /** The height of a round. */
    public double roundMm() {
        return MM_IN_10_CM / roundsIn10Cm;
    }

    static void requirePositive(double number, String what) {
        if (!(number > 0) || Double.isInfinite(number)) {
            throw new IllegalArgumentException(what + ": " + number + ", expected a number above 0");
        }
    }
}
