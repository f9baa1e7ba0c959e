package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.chart.YarnUse;
import java.util.OptionalDouble;
import java.util.function.Function;

/** How much yarn the designer's stitches take. */
final class YarnUseCodec extends RecordCodec<YarnUse> {
    private final Member<YarnUse, OptionalDouble> backLoop = of("backLoop", YarnUse::backLoop);
    private final Member<YarnUse, OptionalDouble> plain = of("plain", YarnUse::plain);
    private final Member<YarnUse, OptionalDouble> longStitch = of("long", YarnUse::longStitch);
    private final Member<YarnUse, OptionalDouble> chain = of("chain", YarnUse::chain);
    private final Member<YarnUse, OptionalDouble> tall = of("tall", YarnUse::tall);
    private final Member<YarnUse, OptionalDouble> slip = of("slip", YarnUse::slip);

    private Member<YarnUse, OptionalDouble> of(String name, Function<YarnUse, OptionalDouble> stitch) {
        return optional(name, ValueCodecs.MAYBE_A_MEASURE, OptionalDouble.empty(), stitch);
    }

    @Override
    YarnUse make(FoundMembers found) {
        return new YarnUse(
                found.get(backLoop),
                found.get(plain),
                found.get(longStitch),
                found.get(chain),
                found.get(tall),
                found.get(slip),
                found.extras());
    }

    @Override
    Extras extras(YarnUse use) {
        return use.extras();
    }
}
