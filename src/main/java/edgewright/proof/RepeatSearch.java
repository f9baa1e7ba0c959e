package edgewright.proof;

import edgewright.chart.PerSide;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntBinaryOperator;

/**
 * Finds where the rounds of a border are cut into corner sections and repeats, by their stitches alone.
 *
 * <p>Round r is cut after A + r stitches and before its last B + r. Between the cuts stands the same repeat over and over, and
 * all four sides are alike in all three sections. Of all cuts the ones with the fewest stitches in A + B are wanted.
 *
 * <p>Whether a cut will do is not tried letter by letter. For each A it is known from one walk along each side how far the
 * stitches go on repeating, which says how large A + B must be at the least; how far the sides are alike from their starts and
 * from their ends says how large A and B may be at the most. So a search takes as long as reading the border a few times.
 */
final class RepeatSearch {
    /**
     * Where the rounds are cut.
     *
     * @param a A
     * @param b B
     */
    record Cut(int a, int b) {}

    private final List<PerSide<String>> rounds;
    private final int w;
    /** What is left of the shortest side of the base round by whole repeats: A + B is that and any number of repeats. */
    private final int rest;
    /** A + B can be no larger: then the shortest side has no repeat. */
    private final int most;

    private int mostA = Integer.MAX_VALUE;
    private int mostB = Integer.MAX_VALUE;
    /** The least A + B for each A, that what is between the cuts may repeat. */
    private final int[] least;
    /** Whether the repeat that begins after A is alike on all sides, for each A. */
    private final boolean[] alike;
    /** The same for the sides that still have a repeat when A + B is as large as it can be. */
    private final boolean[] longerAlike;

    private RepeatSearch(List<PerSide<String>> rounds, int w, int shortest) {
        this.rounds = rounds;
        this.w = w;
        this.rest = shortest % w;
        this.most = Math.max(-1, Math.min(shortest, fewest()));
        this.least = new int[most + 1];
        this.alike = new boolean[most + 1];
        this.longerAlike = new boolean[most + 1];
        Arrays.fill(alike, true);
        Arrays.fill(longerAlike, true);
    }

    /**
     * The best cut; empty if none will do.
     *
     * @param rounds the letters of each side, in working order from its own corner; element 0 is round 1
     * @param w the width of the repeat
     * @param shortest the stitches of the shortest side of the base round
     * @param worth how good a cut is by its A and B, of those with the fewest stitches; of equal ones the smallest A is taken
     */
    static Optional<Cut> best(List<PerSide<String>> rounds, int w, int shortest, IntBinaryOperator worth) {
        RepeatSearch search = new RepeatSearch(rounds, w, shortest);
        return search.comesOut() ? search.best(worth) : Optional.empty();
    }

    /** The stitches of a side without what it has grown by. */
    private static int ungrown(String letters, int round) {
        return letters.length() - 2 * round;
    }

    private int fewest() {
        int fewest = Integer.MAX_VALUE;
        for (int r = 1; r <= rounds.size(); r++) {
            int round = r;
            fewest = Math.min(
                    fewest,
                    rounds.get(r - 1).stream()
                            .mapToInt(letters -> ungrown(letters, round))
                            .min()
                            .orElseThrow());
        }
        return fewest;
    }

    private boolean comesOut() {
        for (int r = 1; r <= rounds.size(); r++) {
            int round = r;
            if (!rounds.get(r - 1).stream().allMatch(letters -> (ungrown(letters, round) - rest) % w == 0)) {
                return false;
            }
        }
        return true;
    }

    private Optional<Cut> best(IntBinaryOperator worth) {
        for (int r = 1; r <= rounds.size(); r++) {
            look(r, rounds.get(r - 1).stream().toList());
        }
        int fewest = Integer.MAX_VALUE;
        int highest = 0;
        Optional<Cut> best = Optional.empty();
        for (int a = 0; a <= Math.min(most, mostA); a++) {
            int corners = corners(a);
            if (corners > fewest || corners == Integer.MAX_VALUE) {
                continue;
            }
            int value = worth.applyAsInt(a, corners - a);
            if (corners < fewest || value > highest) {
                fewest = corners;
                highest = value;
                best = Optional.of(new Cut(a, corners - a));
            }
        }
        return best;
    }

    /** The least A + B that will do with an A; more than any if none will. */
    private int corners(int a) {
        int from = Math.max(least[a], a);
        int first = from + Math.floorMod(rest - from, w);
        long last = Math.min((long) a + mostB, most);
        if (first < most && first <= last && alike[a]) {
            return first;
        }
        return first <= most && last == most && longerAlike[a] && (most - rest) % w == 0 ? most : Integer.MAX_VALUE;
    }

    private void look(int round, List<String> sides) {
        String longest =
                sides.stream().max(Comparator.comparingInt(String::length)).orElseThrow();
        int alikeStart = longest.length();
        int alikeEnd = longest.length();
        for (String letters : sides) {
            walk(round, letters, longest);
            alikeStart = Math.min(alikeStart, alikeStart(letters, longest));
            alikeEnd = Math.min(alikeEnd, alikeEnd(letters, longest));
        }
        mostA = Math.min(mostA, alikeStart - round);
        mostB = Math.min(mostB, alikeEnd - round);
        if (ungrown(longest, round) == most) {
            Arrays.fill(longerAlike, false);
        }
    }

    /** Walks a side from its end, and keeps for each A where the next stitch stands that differs. */
    private void walk(int round, String letters, String longest) {
        int length = letters.length();
        boolean isLonger = ungrown(letters, round) > most;
        int unlikeNextRepeat = length - w;
        int unlikeLongest = Integer.MAX_VALUE;
        for (int i = length - 1; i >= round; i--) {
            if (i + w < length && letters.charAt(i) != letters.charAt(i + w)) {
                unlikeNextRepeat = i;
            }
            if (letters.charAt(i) != longest.charAt(i)) {
                unlikeLongest = i;
            }
            int a = i - round;
            if (a <= most) {
                least[a] = Math.max(least[a], length - round - w + a - Math.max(unlikeNextRepeat, i));
                boolean likeLongest = unlikeLongest - i >= w;
                alike[a] &= likeLongest;
                longerAlike[a] &= likeLongest || !isLonger;
            }
        }
    }

    private static int alikeStart(String one, String other) {
        int i = 0;
        while (i < Math.min(one.length(), other.length()) && one.charAt(i) == other.charAt(i)) {
            i++;
        }
        return i;
    }

    private static int alikeEnd(String one, String other) {
        int i = 0;
        while (i < Math.min(one.length(), other.length())
                && one.charAt(one.length() - 1 - i) == other.charAt(other.length() - 1 - i)) {
            i++;
        }
        return i;
    }
}
