package edgewright.assist.picture;

import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.List;

/**
 * The witness against the search: every column of back-loop and long stitches, written out one by one, and the craft's rules told
 * in the plainest words. It shares nothing with the program but the type of a stitch.
 */
final class PlainColumns {
    private PlainColumns() {}

    /** All columns of so many rounds that hands can work; index 0 is round 1. */
    static List<boolean[]> workable(int rounds, boolean stacking) {
        List<boolean[]> workable = new ArrayList<>();
        for (int bits = 0; bits < 1 << rounds; bits++) {
            boolean[] isLong = new boolean[rounds];
            for (int i = 0; i < rounds; i++) {
                isLong[i] = (bits >> i & 1) != 0;
            }
            if (isWorkable(isLong, stacking)) {
                workable.add(isLong);
            }
        }
        return workable;
    }

    private static boolean isWorkable(boolean[] isLong, boolean stacking) {
        if (isLong[0]) {
            return false;
        }
        for (int i = 1; i < isLong.length; i++) {
            boolean onLong = isLong[i - 1];
            boolean ontoLong = i >= 2 && isLong[i - 2] && !stacking;
            if (isLong[i] && (onLong || ontoLong)) {
                return false;
            }
        }
        return true;
    }

    /** The yarn that shows in a round. */
    static String shown(List<String> yarns, boolean[] isLong, int index) {
        boolean covered = index + 1 < isLong.length && isLong[index + 1];
        return yarns.get(covered ? index + 1 : index);
    }

    /** What a column costs. */
    static Cost cost(List<String> yarns, List<Wanted> wanted, boolean[] isLong) {
        long musts = 0;
        long weight = 0;
        long longs = 0;
        for (int i = 0; i < isLong.length; i++) {
            Wanted here = wanted.get(i);
            if (!here.yarn().isEmpty() && !here.yarn().equals(shown(yarns, isLong, i))) {
                musts += here.must() ? 1 : 0;
                weight += here.weight();
            }
            longs += isLong[i] ? 1 : 0;
        }
        return new Cost(musts, weight, longs);
    }

    /** The least cost among these columns, of those that have the locked stitches; null if none has. */
    static Cost least(List<boolean[]> columns, List<String> yarns, List<Wanted> wanted, List<Stitch> locked) {
        Cost least = null;
        for (boolean[] column : columns) {
            boolean fits = true;
            for (int i = 0; i < column.length; i++) {
                fits &= locked.get(i) == null || (locked.get(i) == Stitch.LONG) == column[i];
            }
            if (fits) {
                Cost cost = cost(yarns, wanted, column);
                least = least == null || cost.compareTo(least) < 0 ? cost : least;
            }
        }
        return least;
    }

    /** The fewest misses and, among columns with as few, the fewest long stitches: the first times 100 plus the second. */
    static int fewest(List<boolean[]> columns, List<String> yarns, List<Wanted> wanted) {
        int rounds = yarns.size();
        boolean[] missesOwn = new boolean[rounds];
        boolean[] missesAbove = new boolean[rounds];
        for (int i = 0; i < rounds; i++) {
            String here = wanted.get(i).yarn();
            missesOwn[i] = !here.isEmpty() && !here.equals(yarns.get(i));
            missesAbove[i] = i + 1 < rounds && !here.isEmpty() && !here.equals(yarns.get(i + 1));
        }
        int fewest = Integer.MAX_VALUE;
        for (boolean[] column : columns) {
            int cost = 0;
            for (int i = 0; i < rounds; i++) {
                boolean covered = i + 1 < rounds && column[i + 1];
                cost += (covered ? missesAbove[i] : missesOwn[i]) ? 100 : 0;
                cost += column[i] ? 1 : 0;
            }
            fewest = Math.min(fewest, cost);
        }
        return fewest;
    }
}
