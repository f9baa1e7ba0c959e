package edgewright.check;

import edgewright.chart.Round;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;

/**
 * Whether a round has a run of long stitches longer than some number; see {@link LongRun} for what a run is. This answers by
 * bit sets and makes no objects; which runs they are is for {@link LongRun} to say.
 */
final class LongRuns {
    private LongRuns() {}

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
            long bits = row.word(Stitch.LONG, n);
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
        while (n < row.words() && row.word(Stitch.LONG, n) == -1L) {
            n++;
        }
        return n == row.words() ? row.length() : Long.SIZE * n + Long.numberOfTrailingZeros(~row.word(Stitch.LONG, n));
    }

    /** How many long stitches a row ends with. */
    private static int trailing(Stitches row) {
        int used = (row.length() - 1 & 63) + 1;
        int n = row.words() - 1;
        long top = row.word(Stitch.LONG, n) << (Long.SIZE - used);
        int count = Long.numberOfLeadingZeros(~top);
        if (count < used) {
            return count;
        }
        count = used;
        for (n--; n >= 0; n--) {
            int more = Long.numberOfLeadingZeros(~row.word(Stitch.LONG, n));
            count += more;
            if (more < Long.SIZE) {
                break;
            }
        }
        return count;
    }
}
