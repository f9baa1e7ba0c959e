package edgewright.yarn;

import edgewright.chart.Chart;
import edgewright.chart.Stitch;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The charted rounds in groups that can take another yarn and keep the picture.
 *
 * <p>The picture is kept if three things hold. A long stitch that lands on a round of its own yarn goes on doing so, so the
 * two rounds are in one group; likewise neighbouring rounds of one yarn, which show as one band. Neighbouring rounds of
 * different yarns stay different. And two yarns meet only if they can be told apart, or meet in the chart already.
 */
final class RoundGroups {
    private final Chart chart;
    private final List<List<Integer>> groups;
    private final List<Set<Integer>> beside = new ArrayList<>();
    private final int[] groupOfRound;
    private final Set<Set<String>> mayMeet = new HashSet<>();

    private RoundGroups(Chart chart, int[] leader) {
        this.chart = chart;
        Map<Integer, List<Integer>> byLeader = new LinkedHashMap<>();
        for (int r = 1; r < leader.length; r++) {
            byLeader.computeIfAbsent(find(leader, r), unused -> new ArrayList<>())
                    .add(r);
        }
        groups = List.copyOf(byLeader.values());
        groupOfRound = new int[leader.length];
        for (int group = 0; group < groups.size(); group++) {
            for (int round : groups.get(group)) {
                groupOfRound[round] = group;
            }
            beside.add(new TreeSet<>());
        }
        for (int r = 2; r < leader.length; r++) {
            if (groupOfRound[r] != groupOfRound[r - 1]) {
                beside.get(groupOfRound[r]).add(groupOfRound[r - 1]);
                beside.get(groupOfRound[r - 1]).add(groupOfRound[r]);
            }
        }
        meetings();
    }

    static RoundGroups of(Chart chart) {
        int[] leader = new int[chart.rounds().size() + 1];
        for (int r = 1; r < leader.length; r++) {
            leader[r] = r;
            String yarn = chart.round(r).yarn();
            if (r >= 2 && chart.round(r - 1).yarn().equals(yarn)) {
                join(leader, r - 1, r);
            }
            for (int down = 2; down <= Stitch.DEEPEST && down < r; down++) {
                if (chart.round(r - down).yarn().equals(yarn) && chart.round(r).has(reaching(down))) {
                    join(leader, r - down, r);
                }
            }
        }
        return new RoundGroups(chart, leader);
    }

    private static Predicate<Stitch> reaching(int down) {
        return stitch -> stitch.roundsDown() == down;
    }

    int size() {
        return groups.size();
    }

    /** The rounds of a group, ascending. */
    List<Integer> rounds(int group) {
        return groups.get(group);
    }

    int ofRound(int round) {
        return groupOfRound[round];
    }

    /** The yarn of a group in the chart. */
    String yarn(int group) {
        return chart.round(groups.get(group).get(0)).yarn();
    }

    /** The groups that have a round beside one of this group. */
    Set<Integer> beside(int group) {
        return beside.get(group);
    }

    /** Whether a round of one yarn may lie beside a round of the other. */
    boolean mayMeet(String one, String two) {
        return mayMeet.contains(Set.of(one, two));
    }

    private void meetings() {
        List<Yarn> yarns = chart.yarns();
        for (Yarn one : yarns) {
            for (Yarn two : yarns) {
                if (!one.id().equals(two.id())
                        && !Contrast.between(one.colour(), two.colour()).isLow()) {
                    mayMeet.add(Set.of(one.id(), two.id()));
                }
            }
        }
        YarnPair.of(chart)
                .forEach(meeting ->
                        mayMeet.add(Set.of(meeting.inner().id(), meeting.outer().id())));
    }

    private static int find(int[] leader, int round) {
        int at = round;
        while (leader[at] != at) {
            at = leader[at];
        }
        return at;
    }

    private static void join(int[] leader, int one, int two) {
        int first = find(leader, one);
        int second = find(leader, two);
        leader[Math.max(first, second)] = Math.min(first, second);
    }
}
