package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.chart.Rules;

/** What the designer allows. */
final class RulesCodec extends RecordCodec<Rules> {
    private final Member<Rules, Boolean> landOnCornerChain =
            usual("landOnCornerChain", Values.TRUTH, Rules.DEFAULT.landOnCornerChain(), Rules::landOnCornerChain);
    private final Member<Rules, Boolean> stackLongStitches =
            usual("stackLongStitches", Values.TRUTH, Rules.DEFAULT.stackLongStitches(), Rules::stackLongStitches);
    private final Member<Rules, Integer> looseRun =
            usual("looseRun", Values.whole(1, Integer.MAX_VALUE), Rules.DEFAULT.looseRun(), Rules::looseRun);

    @Override
    Rules make(Found found) {
        return new Rules(
                found.get(landOnCornerChain), found.get(stackLongStitches), found.get(looseRun), found.extras());
    }

    @Override
    Extras extras(Rules rules) {
        return rules.extras();
    }
}
