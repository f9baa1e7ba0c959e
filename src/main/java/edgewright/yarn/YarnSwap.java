package edgewright.yarn;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Rounds that could all be worked in another yarn of the chart while all other rounds stay as they are, and the picture is
 * kept.
 *
 * @param rounds ascending; they belong together, because long stitches join them or they lie side by side in one yarn
 * @param from the yarn that they are charted in
 * @param to the yarns that they could be worked in instead, in the order of the chart; none if there is no other
 */
public record YarnSwap(List<Integer> rounds, Yarn from, List<Yarn> to) {
    public YarnSwap {
        rounds = List.copyOf(rounds);
        to = List.copyOf(to);
    }

    /** What could be swapped in this chart: each charted round is in one of these, in the order of their first rounds. */
    public static List<YarnSwap> of(Chart chart) {
        RoundGroups groups = RoundGroups.of(chart);
        List<YarnSwap> swaps = new ArrayList<>();
        for (int group = 0; group < groups.size(); group++) {
            String own = groups.yarn(group);
            Set<Integer> beside = groups.beside(group);
            List<Yarn> others = chart.yarns().stream()
                    .filter(yarn -> !yarn.id().equals(own))
                    .filter(yarn -> beside.stream().allMatch(other -> differ(groups, yarn.id(), groups.yarn(other))))
                    .toList();
            swaps.add(new YarnSwap(groups.rounds(group), chart.yarn(own).orElseThrow(), others));
        }
        return List.copyOf(swaps);
    }

    private static boolean differ(RoundGroups groups, String one, String two) {
        return !one.equals(two) && groups.mayMeet(one, two);
    }
}
