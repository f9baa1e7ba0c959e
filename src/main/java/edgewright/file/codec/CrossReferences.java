package edgewright.file.codec;

import edgewright.chart.BorderShape;
import edgewright.chart.Round;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Fault;
import edgewright.file.fault.Problem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What members of a chart say of each other. Members may come in any order, so these are gathered while the chart is read and
 * judged at its end.
 */
final class CrossReferences {
    /** Ids of all yarns, also of those that are wrong in other ways, so that their rounds are not blamed too. */
    private final Set<String> yarnIds = new LinkedHashSet<>();

    private final List<Named> yarnsNamed = new ArrayList<>();
    private int yarnsListed;
    private Optional<StartColumn> startColumn = Optional.empty();

    private record Named(String id, int line, String path) {}

    private record StartColumn(int column, int line, String path) {}

    /** A yarn has this id. Says whether no yarn before it has the same. */
    boolean yarnHas(String id) {
        return yarnIds.add(id);
    }

    /** The chart lists so many yarns. */
    void yarnsListed(int number) {
        yarnsListed = number;
    }

    /** A round names this yarn, at the current value. */
    void roundNames(String id, JsonWalk json) {
        yarnsNamed.add(new Named(id, json.line(), json.path()));
    }

    /** The rounds are to be started in this column, as the current value says. */
    void startsIn(int column, JsonWalk json) {
        startColumn = Optional.of(new StartColumn(column, json.line(), json.path()));
    }

    /** Notes each round whose yarn is not there; none while some yarn has no id, since nobody can say then. */
    void judgeYarns(Reading in) {
        if (yarnIds.isEmpty() || yarnIds.size() != yarnsListed) {
            return;
        }
        for (Named named : yarnsNamed) {
            if (!yarnIds.contains(named.id())) {
                Fault fault = new ChartFault.NoSuchYarn(named.id(), List.copyOf(yarnIds));
                in.note(Problem.atMember(fault, named.line(), named.path()));
            }
        }
    }

    /** Notes a start column past the first repeat. */
    void judgeStart(Round first, Reading in) {
        int last = BorderShape.of(first).lastStart();
        startColumn.filter(start -> start.column() > last).ifPresent(start -> {
            Fault fault = new ChartFault.NoSuchColumn(start.column(), last);
            in.note(Problem.atMember(fault, start.line(), start.path()));
        });
    }
}
