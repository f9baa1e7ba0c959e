package edgewright.file.codec;

import edgewright.chart.Corner;
import edgewright.chart.Extras;

/** How the corners are turned. */
final class CornerCodec extends RecordCodec<Corner> {
    private final Member<Corner, Integer> chains =
            usual("chains", ValueCodecs.whole(1, Corner.MOST_CHAINS), Corner.DEFAULT.chains(), Corner::chains);

    @Override
    Corner make(FoundMembers found) {
        return new Corner(found.get(chains), found.extras());
    }

    @Override
    Extras extras(Corner corner) {
        return corner.extras();
    }
}
