package edgewright.words.tree;

import edgewright.chart.Stitch;
import java.util.List;
import java.util.Objects;

/** A piece of work along a side on which stitches are added or lost. Source of the two ways: common practice, no source. */
public sealed interface ChangingStep {
    /** One stitch in each of so many. */
    record Work(Run run) implements ChangingStep {
        public Work {
            Objects.requireNonNull(run);
        }
    }

    /** Two stitches in the next one: a stitch more. */
    record TwoInOne(Stitch first, Stitch second) implements ChangingStep {
        public TwoInOne {
            Objects.requireNonNull(first);
            Objects.requireNonNull(second);
        }
    }

    /** The next two stitches worked together: a stitch less. */
    record Together(Stitch stitch) implements ChangingStep {
        public Together {
            Objects.requireNonNull(stitch);
        }
    }

    /**
     * The same over and over.
     *
     * @param steps at least one; none of them is such a repeat itself
     * @param times 2 or more
     */
    record Times(List<ChangingStep> steps, int times) implements ChangingStep {
        public Times {
            steps = List.copyOf(steps);
            if (steps.isEmpty() || times < 2 || steps.stream().anyMatch(Times.class::isInstance)) {
                throw new IllegalArgumentException(steps + ", " + times + " times");
            }
        }
    }
}
