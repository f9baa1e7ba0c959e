package edgewright.file.codec;

import edgewright.chart.Back;
import edgewright.chart.Extras;
import edgewright.chart.HookSize;
import java.util.Optional;

/** The back layer. */
final class BackCodec extends RecordCodec<Back> {
    private final Member<Back, Optional<HookSize>> hook =
            optional("hook", ValueCodecs.HOOK, Optional.empty(), Back::hook);

    @Override
    Back make(FoundMembers found) {
        return new Back(found.get(hook), found.extras());
    }

    @Override
    Extras extras(Back back) {
        return back.extras();
    }
}
