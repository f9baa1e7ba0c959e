package edgewright.file.codec;

import edgewright.chart.HookSize;
import java.util.Optional;
import java.util.OptionalDouble;

/** Codecs of measured values of a chart. */
final class MeasureCodecs {
    /** A measure that may be left out. */
    static final Codec<OptionalDouble> MAYBE = ValueCodecs.MEASURE.as(OptionalDouble::of, OptionalDouble::getAsDouble);

    /** The thickness of a hook in millimetres, to the hundredth. */
    static final Codec<Optional<HookSize>> HOOK =
            ValueCodecs.MEASURE.as(HookSize::ofMm, HookSize::mm).orNone();

    private MeasureCodecs() {}
}
