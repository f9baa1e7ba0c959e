package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.chart.Rules;

/** What the designer allows. */
final class RulesCodec extends RecordCodec<Rules> {
    private final Member<Rules, Boolean> landOnCornerChain =
            usual("landOnCornerChain", ValueCodecs.TRUTH, Rules.DEFAULT.landOnCornerChain(), Rules::landOnCornerChain);
    private final Member<Rules, Boolean> stackLongStitches =
            usual("stackLongStitches", ValueCodecs.TRUTH, Rules.DEFAULT.stackLongStitches(), Rules::stackLongStitches);
    private final Member<Rules, Integer> looseRun =
            usual("looseRun", ValueCodecs.whole(1, Integer.MAX_VALUE), Rules.DEFAULT.looseRun(), Rules::looseRun);

    @Override
    Rules make(FoundMembers found) {
        return new Rules(
                found.get(landOnCornerChain), found.get(stackLongStitches), found.get(looseRun), found.extras());
    }

    @Override
    Extras extras(Rules rules) {
        return rules.extras();
    }
}
