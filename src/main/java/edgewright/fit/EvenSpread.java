package edgewright.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The law of spreading changes along a row of stitches.
 *
 * <p>Change i of k lies as near to stitch i * n / (k + 1) as gaps allow that differ by at most one, where n is the number
 * of stitches. A gap is the plain stitches before, between or after changes. The two stitches next to either end of the row
 * are never changed; where changes are so many that this needs longer gaps at the ends, the gaps between the changes alone
 * differ by at most one.
 *
 * <p>Source of the division by changes plus one: common practice; also
 * https://www.10rowsaday.com/evenly-increase-decrease. Of the clear ends:
 * http://knittingwithkarma.blogspot.com/2011/06/knitting-math-5-increases-and-decreases.html
 */
final class EvenSpread {
    /** The stitches at each end of a row that are never changed. */
    static final int CLEAR = 2;

    private EvenSpread() {}

    /** The most changes that a row of so many stitches has room for. */
    static int most(int stitches, CountChange change) {
        return Math.max(0, (stitches - 2 * CLEAR) / change.used());
    }

    /**
     * The plain stitches before each change and after the last: one number more than there are changes.
     *
     * @throws IllegalArgumentException if there is no room for so many
     */
    static List<Integer> gaps(int stitches, CountChange change, int changes) {
        if (changes < 0 || changes > most(stitches, change)) {
            throw new IllegalArgumentException(stitches + " stitches have no room for " + changes + " changes");
        }
        int plain = stitches - changes * change.used();
        if (changes == 0 || plain / (changes + 1) >= CLEAR) {
            return near(stitches, change, changes);
        }
        List<Integer> gaps = new ArrayList<>();
        gaps.add(CLEAR);
        if (changes > 1) {
            gaps.addAll(shares(plain - 2 * CLEAR, changes - 1));
            gaps.add(CLEAR);
        } else {
            gaps.add(plain - CLEAR);
        }
        return List.copyOf(gaps);
    }

    /** A number in so many parts that differ by at most one, the longer ones spread among the others. */
    static List<Integer> shares(int number, int parts) {
        List<Integer> shares = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            shares.add((int) ((i + 1L) * number / parts - (long) i * number / parts));
        }
        return Collections.unmodifiableList(shares);
    }

    private static List<Integer> near(int stitches, CountChange change, int changes) {
        int plain = stitches - changes * change.used();
        int shorter = plain / (changes + 1);
        int longerLeft = plain % (changes + 1);
        List<Integer> gaps = new ArrayList<>();
        int done = 0;
        for (int i = 1; i <= changes; i++) {
            int gapsLeft = changes + 2 - i;
            long first = done + shorter + 1L;
            // The longer gap is taken where it brings the change nearer to i * n / (k + 1), or none but longer ones are
            // left.
            boolean nearer = 2L * i * stitches > (2 * first + 1) * (changes + 1);
            int gap = longerLeft == gapsLeft || (longerLeft > 0 && nearer) ? shorter + 1 : shorter;
            longerLeft -= gap - shorter;
            gaps.add(gap);
            done += gap + change.used();
        }
        gaps.add(stitches - done);
        return List.copyOf(gaps);
    }
}
