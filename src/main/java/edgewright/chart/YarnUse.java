package edgewright.chart;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How much yarn the designer's own stitches take: work twenty of a kind, unravel them and measure. Lengths are in
 * centimetres for twenty stitches, above 0; what was not measured is empty.
 *
 * @param longStitch twenty long stitches
 * @param tall twenty of the tall stitches of a back layer
 * @param slip twenty slip stitches
 */
public record YarnUse(
        OptionalDouble backLoop,
        OptionalDouble plain,
        OptionalDouble longStitch,
        OptionalDouble chain,
        OptionalDouble tall,
        OptionalDouble slip,
        Extras extras) {
    /** How many stitches of a kind are measured. */
    public static final int STITCHES = 20;

    /** Nothing was measured. */
    public static final YarnUse NONE = new YarnUse(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Extras.NONE);

    public YarnUse {
        Objects.requireNonNull(extras);
        Stream.of(backLoop, plain, longStitch, chain, tall, slip)
                .flatMapToDouble(OptionalDouble::stream)
                .forEach(cm -> Measures.requirePositive(cm, "centimetres in twenty stitches"));
    }

    /** The length that was measured for this stitch of the front. */
    public OptionalDouble of(Stitch stitch) {
        return switch (stitch) {
            case BACK_LOOP -> backLoop;
            case PLAIN -> plain;
            case LONG -> longStitch;
            case CHAIN -> chain;
        };
    }

    /** Whether nothing was measured. */
    public boolean isEmpty() {
        return equals(NONE);
    }
}
