package edgewright.desk.panes;

import edgewright.check.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * Which findings are listed, and how they are put together. Each keeps the number that it has on the chart.
 *
 * @param rule the id of the only rule that is listed; empty for all
 * @param round the only round that is listed; empty for all, and for what is about no round
 */
record FindingChoice(Optional<String> rule, OptionalInt round, Grouping grouping) {
    /** All findings, in working order. */
    static final FindingChoice ALL = new FindingChoice(Optional.empty(), OptionalInt.empty(), Grouping.NONE);

    /** How findings are put together. */
    enum Grouping {
        NONE,
        /** The rule first that has most findings. */
        RULE,
        /** In working order. */
        ROUND
    }

    /**
     * A finding in the list.
     *
     * @param number its number on the chart, from 1
     * @param group how many findings the group has of which it is the first; empty for any other
     */
    record Listed(Finding finding, int number, OptionalInt group) {}

    boolean isAll() {
        return rule.isEmpty() && round.isEmpty();
    }

    FindingChoice withRound(OptionalInt wanted) {
        return new FindingChoice(rule, wanted, grouping);
    }

    FindingChoice withGrouping(Grouping wanted) {
        return new FindingChoice(rule, round, wanted);
    }

    /** The findings that are listed, of all that there are in working order. */
    List<Listed> of(List<Finding> all) {
        List<Listed> wanted = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Finding finding = all.get(i);
            if (isWanted(finding)) {
                wanted.add(new Listed(finding, i + 1, OptionalInt.empty()));
            }
        }
        return grouping == Grouping.NONE ? wanted : grouped(wanted);
    }

    private boolean isWanted(Finding finding) {
        return (rule.isEmpty() || rule.get().equals(finding.rule()))
                && (round.isEmpty() || round.equals(finding.place().inRound()));
    }

    private List<Listed> grouped(List<Listed> wanted) {
        Map<Object, List<Listed>> groups = wanted.stream()
                .collect(Collectors.groupingBy(
                        listed -> group(listed.finding()), LinkedHashMap::new, Collectors.toList()));
        List<List<Listed>> inOrder = new ArrayList<>(groups.values());
        if (grouping == Grouping.RULE) {
            inOrder.sort(Comparator.comparingInt(group -> -group.size()));
        }
        List<Listed> grouped = new ArrayList<>();
        for (List<Listed> group : inOrder) {
            Listed first = group.get(0);
            grouped.add(new Listed(first.finding(), first.number(), OptionalInt.of(group.size())));
            grouped.addAll(group.subList(1, group.size()));
        }
        return grouped;
    }

    private Object group(Finding finding) {
        return grouping == Grouping.RULE ? finding.rule() : finding.place().inRound();
    }
}
