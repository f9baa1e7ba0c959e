package edgewright.fit;

import edgewright.chart.Counting;
import edgewright.chart.SideShape;

/**
 * 'A multiple of so many plus so many': the counts with which a side closes in one round, in one way of counting.
 *
 * @param of the width of the repeat; 1 or more, and 1 means any number
 * @param plus what is left when a count is divided by {@code of}; 0 to {@code of - 1}
 * @param fewest the smallest count, with no repeat worked
 * @param counting whether a corner chain is counted at each end
 */
public record SideMultiple(int of, int plus, int fewest, Counting counting) {
    /** The counts with which a side closes in that round. */
    public static SideMultiple of(SideShape shape, int round, Counting counting) {
        int fewest = counting.shown(shape.fewestStitches(round));
        return new SideMultiple(shape.w(), fewest % shape.w(), fewest, counting);
    }

    /** Whether a side with this count closes. */
    public boolean has(int count) {
        return count >= fewest && count % of == plus;
    }
}
