package edgewright.file.codec;

import edgewright.chart.BorderShape;
import edgewright.chart.Round;
import edgewright.chart.SideShape;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Fault;
import edgewright.file.fault.Problem;
import edgewright.file.json.JsonWalk;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
    private final Set<String> sizeNames = new HashSet<>();
    private final List<SideStitches> sidesOfSizes = new ArrayList<>();

    private record Named(String id, int line, String path) {}

    private record StartColumn(int column, int line, String path) {}

    private record SideStitches(int stitches, int line, String path) {}

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

    /** A size has this name. Says whether no size before it has the same. */
    boolean sizeHas(String name) {
        return sizeNames.add(name);
    }

    /** A side of a size has so many stitches in the base round, as the current value says. */
    void sideHas(int stitches, JsonWalk json) {
        sidesOfSizes.add(new SideStitches(stitches, json.line(), json.path()));
    }

    /** Notes each side of a size that does not close. */
    void judgeSizes(Round first, Reading in) {
        SideShape shape = new SideShape(
                first.fromCorner().length() - 1,
                first.repeat().length(),
                first.toCorner().length() - 1);
        for (SideStitches side : sidesOfSizes) {
            int more = side.stitches() + shape.toAdd(0, side.stitches());
            if (more != side.stitches()) {
                OptionalInt fewer = shape.toLose(0, side.stitches());
                List<Integer> nearest =
                        fewer.isPresent() ? List.of(side.stitches() - fewer.getAsInt(), more) : List.of(more);
                Fault fault = new ChartFault.NotClosing(side.stitches(), nearest);
                in.note(Problem.atMember(fault, side.line(), side.path()));
            }
        }
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
