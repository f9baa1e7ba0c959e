package edgewright.words.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a side costs at least, found by trying everything: every place where the group may begin and end, and every way of
 * putting runs into brackets. Shares nothing with the writer but the rules of the decision 0012.
 */
final class LeastWords {
    private static final int DEEPEST = 2;

    private final Map<String, Integer> known = new HashMap<>();

    /** The least cost of words that hold for any number of repeats from {@code fewest} on; none if there are no such words. */
    int of(String from, String repeat, String to, int fewest) {
        String period = period(repeat);
        if (period.length() == 1) {
            return ofOneStitch(from, period, to);
        }
        int many = 4 * period.length() / repeat.length() + 4;
        String side = from + repeat.repeat(many) + to;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < from.length() + period.length(); i++) {
            for (int j = 0; j < to.length() + period.length(); j++) {
                String group = side.substring(i, i + period.length());
                String last = side.substring(side.length() - j);
                if (holds(from, repeat, to, side.substring(0, i), group, last, fewest)
                        && isUncut(side.substring(0, i), group, last)) {
                    int cost = cost(side.substring(0, i)) + cost(group) + cost(last) + (j == 0 ? 2 : 3);
                    least = Math.min(least, cost);
                }
            }
        }
        return least;
    }

    /** All that is alike belongs to 'in every stitch'; a stitch of which that is not said stands after an asterisk. */
    private int ofOneStitch(String from, String stitch, String to) {
        String first = from;
        while (first.endsWith(stitch)) {
            first = first.substring(0, first.length() - 1);
        }
        String last = to;
        while (last.startsWith(stitch)) {
            last = last.substring(1);
        }
        int group = stitch.equals("b") || stitch.equals("p") ? 1 : 4;
        return cost(first) + group + (last.isEmpty() ? 0 : 1) + cost(last);
    }

    static String period(String repeat) {
        int length = 1;
        while (!repeat.substring(0, length).repeat(repeat.length() / length).equals(repeat)) {
            length++;
        }
        return repeat.substring(0, length);
    }

    private static boolean holds(
            String from, String repeat, String to, String first, String group, String last, int fewest) {
        for (int m = fewest; m <= fewest + 3; m++) {
            String side = from + repeat.repeat(m) + to;
            int room = side.length() - first.length() - last.length();
            if (room < 0
                    || room % group.length() != 0
                    || !side.equals(first + group.repeat(room / group.length()) + last)) {
                return false;
            }
        }
        return true;
    }

    /** Whether different stitches meet at each edge of the group, and where it ends and begins again. */
    private static boolean isUncut(String first, String group, String last) {
        char begins = group.charAt(0);
        char ends = group.charAt(group.length() - 1);
        return begins != ends
                && (first.isEmpty() || first.charAt(first.length() - 1) != begins)
                && (last.isEmpty() || last.charAt(0) != ends);
    }

    /** The least that these stitches cost as runs and brackets. */
    int cost(String letters) {
        return cost(runs(letters), DEEPEST);
    }

    static List<String> runs(String letters) {
        List<String> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= letters.length(); i++) {
            if (i == letters.length() || letters.charAt(i) != letters.charAt(start)) {
                runs.add(letters.substring(start, i));
                start = i;
            }
        }
        return runs;
    }

    private int cost(List<String> runs, int level) {
        if (runs.isEmpty()) {
            return 0;
        }
        String key = level + " " + runs;
        Integer before = known.get(key);
        if (before != null) {
            return before;
        }
        int least = 2 + cost(runs.subList(1, runs.size()), level);
        for (int length = 1; level > 0 && 2 * length <= runs.size(); length++) {
            List<String> block = runs.subList(0, length);
            int past = length;
            while (past + length <= runs.size()
                    && runs.subList(past, past + length).equals(block)) {
                past += length;
                int cost = 3 + cost(block, level - 1) + cost(runs.subList(past, runs.size()), level);
                least = Math.min(least, cost);
            }
        }
        known.put(key, least);
        return least;
    }
}
