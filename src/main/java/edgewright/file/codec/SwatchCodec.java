package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.chart.Swatch;

/** What a swatch measures. */
final class SwatchCodec extends RecordCodec<Swatch> {
    private final Member<Swatch, Double> stitches = required("stitches", ValueCodecs.MEASURE, Swatch::stitchesIn10Cm);
    private final Member<Swatch, Double> rounds = required("rounds", ValueCodecs.MEASURE, Swatch::roundsIn10Cm);

    @Override
    Swatch make(FoundMembers found) {
        return new Swatch(found.get(stitches), found.get(rounds), found.extras());
    }

    @Override
    Extras extras(Swatch swatch) {
        return swatch.extras();
    }
}
