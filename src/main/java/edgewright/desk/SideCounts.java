package edgewright.desk;

import edgewright.chart.Counting;
import edgewright.chart.SideShape;

/** Says in the trade's way how many stitches a side can have. */
final class SideCounts {
    private SideCounts() {}

    /** The base round of a border of this shape: a multiple of w and what is over, in both ways of counting. */
    static String ofBaseRound(SideShape shape) {
        int fewest = shape.fewestStitches(0);
        int over = fewest % shape.w();
        int overWithChains = Counting.WITH_CHAINS.shown(fewest) % shape.w();
        return Texts.of("counts.base", shape.w(), over, overWithChains, fewest);
    }
}
