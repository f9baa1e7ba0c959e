package edgewright.assist.picture;

import edgewright.chart.Stitch;
import java.util.List;

/**
 * One fabric column as numbers: what each stitch may be and what each cell costs. Index 0 is round 1.
 *
 * <p>A cost is ordered: first how many cells that must show their yarn do not, then the weight of all misses, then how many
 * stitches are long. {@link #MUST}, {@link #WEIGHT} and {@link #LONG} are the units; none can grow into the next, since a column
 * has no more than 2,000 rounds and a cell no more weight than 1,000.
 */
final class ColumnTask {
    static final long LONG = 1;
    static final long WEIGHT = 1L << 12;
    static final long MUST = 1L << 40;

    private static final byte FREE = (byte) (ColumnSteps.bit(Stitch.BACK_LOOP) | ColumnSteps.bit(Stitch.LONG));

    private final byte[] allowed;
    private final long[] uncovered;
    private final long[] covered;

    private ColumnTask(byte[] allowed, long[] uncovered, long[] covered) {
        this.allowed = allowed;
        this.uncovered = uncovered;
        this.covered = covered;
    }

    /**
     * @param yarns the yarn of each round
     * @param wanted what is wanted in each round
     * @param locked the stitch that is locked in each round, null where none is; empty if none is in the whole column
     */
    static ColumnTask of(List<String> yarns, List<Wanted> wanted, List<Stitch> locked) {
        int rounds = yarns.size();
        byte[] allowed = new byte[rounds];
        long[] uncovered = new long[rounds];
        long[] covered = new long[rounds];
        for (int i = 0; i < rounds; i++) {
            Stitch lock = locked.isEmpty() ? null : locked.get(i);
            allowed[i] = lock == null ? FREE : (byte) ColumnSteps.bit(lock);
            uncovered[i] = cost(wanted.get(i), yarns.get(i));
            covered[i] = i + 1 < rounds ? cost(wanted.get(i), yarns.get(i + 1)) : 0;
        }
        return new ColumnTask(allowed, uncovered, covered);
    }

    private static long cost(Wanted wanted, String shows) {
        if (!wanted.isMissedBy(shows)) {
            return 0;
        }
        return wanted.weight() * WEIGHT + (wanted.must() ? MUST : 0);
    }

    /** The same task, but this round is not worked as a long stitch. */
    ColumnTask withoutLong(int index) {
        return with(index, allowed[index] & ~ColumnSteps.bit(Stitch.LONG));
    }

    /** The same task, but this round is worked as a long stitch. */
    ColumnTask withLong(int index) {
        return with(index, ColumnSteps.bit(Stitch.LONG));
    }

    private ColumnTask with(int index, int stitches) {
        byte[] changed = allowed.clone();
        changed[index] = (byte) stitches;
        return new ColumnTask(changed, uncovered, covered);
    }

    int rounds() {
        return allowed.length;
    }

    int allowed(int index) {
        return allowed[index];
    }

    /** What it costs that a round shows its own yarn. */
    long uncovered(int index) {
        return uncovered[index];
    }

    /** What it costs that a round shows the yarn of the round above it. */
    long covered(int index) {
        return covered[index];
    }
}
