package edgewright.chart;

import java.util.Objects;

/**
 * What a swatch in the border's own stitches measures.
 *
 * @param stitchesIn10Cm the stitches side by side in ten centimetres; above 0
 * @param roundsIn10Cm the rounds (of a flat swatch: rows) above each other in ten centimetres; above 0
 */
public record Swatch(double stitchesIn10Cm, double roundsIn10Cm, Extras extras) {
    private static final double MM_IN_10_CM = 100;

    public Swatch {
        Objects.requireNonNull(extras);
        Measures.requirePositive(stitchesIn10Cm, "stitches in 10 cm");
        Measures.requirePositive(roundsIn10Cm, "rounds in 10 cm");
    }

    /** A swatch with no unknown members. */
    public Swatch(double stitchesIn10Cm, double roundsIn10Cm) {
        this(stitchesIn10Cm, roundsIn10Cm, Extras.NONE);
    }

    /** The width of a stitch. */
    public double stitchMm() {
        return MM_IN_10_CM / stitchesIn10Cm;
    }

    /** The height of a round. */
    public double roundMm() {
        return MM_IN_10_CM / roundsIn10Cm;
    }
}
