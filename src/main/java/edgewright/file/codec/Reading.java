package edgewright.file.codec;

import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Fault;
import edgewright.file.fault.Problem;
import edgewright.file.fault.Problem.Shape;
import edgewright.file.json.JsonWalk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One reading of a file: where it stands, what was found wrong up to there, and what can only be judged at its end. */
final class Reading {
    private final JsonWalk json;
    private final CrossReferences links = new CrossReferences();
    private final List<Problem> problems = new ArrayList<>();
    private Optional<Problem> only = Optional.empty();

    Reading(JsonWalk json) {
        this.json = json;
    }

    /** The walk, which stands on the current value. */
    JsonWalk json() {
        return json;
    }

    /** What members of the chart say of each other. */
    CrossReferences links() {
        return links;
    }

    /** All problems up to now, in the order of the file, at most {@link ChartReader#MOST_PROBLEMS} of them. */
    List<Problem> problems() {
        return only.map(List::of).orElseGet(this::sorted);
    }

    private List<Problem> sorted() {
        return problems.stream()
                .sorted(Comparator.comparingInt(problem -> problem.line().orElse(0)))
                .toList();
    }

    /** Notes a problem. The first ones are enough for anybody; a hostile file could have millions. */
    void note(Problem problem) {
        if (problems.size() < ChartReader.MOST_PROBLEMS) {
            problems.add(problem);
        }
    }

    /** Notes a problem of the current value. */
    void note(Fault fault) {
        note(here(fault));
    }

    /** A problem of the current value. */
    Problem here(Fault fault) {
        return Problem.atMember(fault, json.line(), json.path());
    }

    /** Notes a problem that makes all others doubtful, such as a newer version. The last such one is the only one told. */
    void noteOnly(Problem problem) {
        only = Optional.of(problem);
    }

    /** Whether the current value has this shape; if not, it is noted and passed over. */
    boolean standsOn(Shape shape) {
        return standsOn(shape, shape);
    }

    /**
     * The same, with another name for what was expected.
     *
     * @param expected such as a whole number, where any number has the shape
     */
    boolean standsOn(Shape shape, Shape expected) {
        Shape found = json.shape();
        if (found != shape) {
            note(new ChartFault.WrongShape(found, expected));
            json.pass();
        }
        return found == shape;
    }
}
