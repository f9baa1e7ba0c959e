package edgewright.file.codec;

import edgewright.file.fault.Problem;

/** Ends the reading of a text that cannot be read any further. Never leaves this package. */
final class UnreadableException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Problem problem;

    UnreadableException(Problem problem) {
        super(problem.fault().getClass().getSimpleName(), null, false, false);
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}
