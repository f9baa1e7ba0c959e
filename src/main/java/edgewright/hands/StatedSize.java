package edgewright.hands;

import edgewright.chart.Side;
import edgewright.hands.Stop.Reason;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.SideSize;
import java.util.Optional;

/**
 * What is stated of the stitches on a side, to be held against what was made.
 *
 * @param otherCount why a maker stops who has made another number
 * @param noMultiple why a maker stops whose number is not of the multiple
 */
record StatedSize(SideSize size, Reason otherCount, Reason noMultiple) {

    /** The stop, if so many stitches on this side are not what is stated. */
    Optional<Stop> against(int round, Side side, int made) {
        if (size.counts().isPresent()) {
            int expected = size.counts().get().get(side);
            if (expected != made) {
                return Stop.atCount(otherCount, round, side, expected, made);
            }
        }
        if (size.multiple().isPresent() && !size.multiple().get().has(made)) {
            Multiple multiple = size.multiple().get();
            int over = Math.floorMod(made - multiple.plus(), multiple.of());
            return Stop.atCount(noMultiple, round, side, over, made);
        }
        return Optional.empty();
    }
}
