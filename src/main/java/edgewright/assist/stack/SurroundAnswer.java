package edgewright.assist.stack;

import edgewright.chart.Chart;
import edgewright.chart.Section;
import edgewright.chart.Yarn;
import java.util.List;
import java.util.Map;

/** What came of working one border round another. */
public sealed interface SurroundAnswer {

    /**
     * Both as one chart.
     *
     * @param between how many plain rounds lie between
     * @param plainYarn the yarn of the plain rounds, even if there are none
     * @param renamed the yarns of the outer chart that have another id now: the new one by the old one
     */
    record Closes(Chart chart, int between, Yarn plainYarn, Map<String, String> renamed) implements SurroundAnswer {
        public Closes {
            renamed = Map.copyOf(renamed);
        }
    }

    /**
     * No number of plain rounds makes both close: both repeats are even, and one border wants an even count where the other wants
     * an odd one.
     *
     * @param divisor what both repeats are multiples of: the greatest such number
     * @param innerEven whether the inner border closes on sides of an even number of stitches, in every round; the outer then
     *     closes on odd ones
     * @param changes what would make it possible: each changes one section by one stitch, fewest plain rounds first
     */
    record NeverCloses(int divisor, boolean innerEven, List<Change> changes) implements SurroundAnswer {
        public NeverCloses {
            changes = List.copyOf(changes);
        }
    }

    /**
     * A corner section with another length, which makes both close.
     *
     * @param ofInner whether it is a section of the inner chart; if not, of the outer
     * @param section a corner section
     * @param now its stitches in the base round of its own chart, and {@code then} what they would be
     * @param between the plain rounds then
     */
    record Change(boolean ofInner, Section section, int now, int then, int between) {}

    /**
     * Both would close, but no chart is as large.
     *
     * @param what which number is too large
     * @param found that number
     * @param most what it may be
     */
    record TooLarge(Limit what, long found, int most) implements SurroundAnswer {}

    /** What can be too large about a chart. */
    enum Limit {
        ROUNDS,
        REPEAT,
        CORNER,
        YARNS
    }
}
