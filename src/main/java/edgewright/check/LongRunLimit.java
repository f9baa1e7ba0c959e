package edgewright.check;

import edgewright.chart.Round;
import edgewright.chart.Stitches;

/**
 * Whether a round has a run of long stitches longer than some number; see {@link LongRun} for what a run is. This answers by
 * bit sets and makes no objects; which runs they are is for {@link LongRun} to say.
 */
final class LongRunLimit {
    /** From this many on, a longer run leaves a trace in {@link #crowded}. */
    private static final int LEAST_TRACED = 9;

    private static final long EVERY_FOURTH = 0x1111111111111111L;

    private LongRunLimit() {}

    /**
     * A trace of a run: not 0 if there are four long stitches side by side that begin at a place after a multiple of four.
     *
     * <p>Any seven side by side hold such four, and so do the first four of a section. A run of ten or more has either seven
     * in one section, or fewer than seven before a seam and then four or more after it. So a round without a trace has no run
     * of ten, but for a repeat that is all long.
     */
    static long crowded(long longs) {
        long pairs = longs & longs >>> 1;
        return pairs & pairs >>> 2 & EVERY_FOURTH;
    }

    /** Whether a round needs a look at all, by the trace of all its words together. */
    static boolean mayBeLongerThan(int most, long crowded, boolean repeatIsLong) {
        return crowded != 0 || repeatIsLong || most < LEAST_TRACED;
    }

    /**
     * Whether some run of a round is longer than that.
     *
     * @param round not round 1, and of a chart that is not ragged
     */
    static boolean anyLongerThan(int most, Round round) {
        Stitches from = round.fromCorner();
        Stitches repeat = round.repeat();
        Stitches to = round.toCorner();
        int fromEnd = Math.min(trailing(from), from.length() - 1);
        int repeatStart = leading(repeat);
        if (repeatStart == repeat.length()) {
            return true;
        }
        int repeatEnd = trailing(repeat);
        int toStart = Math.min(leading(to), to.length() - 1);
        return fromEnd + Math.max(repeatStart, toStart) > most
                || repeatEnd + Math.max(repeatStart, toStart) > most
                || isWithin(from, most, 0)
                || isWithin(repeat, most, -1)
                || isWithin(to, most, to.length() - 1);
    }

    /**
     * Whether a row has that many long stitches side by side, and more.
     *
     * @param without the index, from 0, of a stitch that does not count; negative for none
     */
    private static boolean isWithin(Stitches row, int most, int without) {
        int open = 0;
        for (int n = 0; n < row.words(); n++) {
            long bits = row.coveringWord(n);
            if (without >> 6 == n) {
                bits &= ~(1L << without);
            }
            int lead = Long.numberOfTrailingZeros(~bits);
            if (open + lead > most || (most < Long.SIZE && shrunk(bits, most) != 0)) {
                return true;
            }
            open = lead == Long.SIZE ? open + lead : Long.numberOfLeadingZeros(~bits);
        }
        return false;
    }

    /** Every run of bits made shorter by that many at its lower end; what is no longer than that goes. */
    private static long shrunk(long bits, int by) {
        long left = bits;
        int done = 0;
        while (done < by && left != 0) {
            int step = Math.min(done + 1, by - done);
            left &= left >>> step;
            done += step;
        }
        return left;
    }

    /** How many long stitches a row begins with. */
    private static int leading(Stitches row) {
        int n = 0;
        while (n < row.words() && row.coveringWord(n) == -1L) {
            n++;
        }
        return n == row.words() ? row.length() : Long.SIZE * n + Long.numberOfTrailingZeros(~row.coveringWord(n));
    }

    /** How many long stitches a row ends with. */
    private static int trailing(Stitches row) {
        int used = (row.length() - 1 & 63) + 1;
        int n = row.words() - 1;
        long top = row.coveringWord(n) << (Long.SIZE - used);
        int count = Long.numberOfLeadingZeros(~top);
        if (count < used) {
            return count;
        }
        count = used;
        for (n--; n >= 0; n--) {
            int more = Long.numberOfLeadingZeros(~row.coveringWord(n));
            count += more;
            if (more < Long.SIZE) {
                break;
            }
        }
        return count;
    }
}
