package edgewright.desk.work;

/**
 * Rounds that lie next to each other.
 *
 * @param first the innermost of them, from 1
 * @param last the outermost, not before {@code first}
 */
public record RoundRange(int first, int last) {
    public RoundRange {
        if (first < 1 || last < first) {
            throw new IllegalArgumentException("no rounds go from " + first + " to " + last);
        }
    }

    /** One round alone. */
    public static RoundRange of(int round) {
        return new RoundRange(round, round);
    }

    public int count() {
        return last - first + 1;
    }

    boolean contains(int round) {
        return first <= round && round <= last;
    }
}
