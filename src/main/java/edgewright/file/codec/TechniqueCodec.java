package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.chart.Technique;

/** How a round is begun and closed. */
final class TechniqueCodec extends RecordCodec<Technique> {
    private final Member<Technique, Technique.Join> join =
            usual("join", ValueCodecs.choice(Technique.Join.values()), Technique.DEFAULT.join(), Technique::join);
    private final Member<Technique, Technique.Close> close =
            usual("close", ValueCodecs.choice(Technique.Close.values()), Technique.DEFAULT.close(), Technique::close);

    @Override
    Technique make(FoundMembers found) {
        return new Technique(found.get(join), found.get(close), found.extras());
    }

    @Override
    Extras extras(Technique technique) {
        return technique.extras();
    }
}
