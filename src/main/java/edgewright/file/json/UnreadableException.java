package edgewright.file.json;

import edgewright.file.fault.Problem;

/** Ends the reading of a text that cannot be read any further. Whoever begins the walk catches it. */
public final class UnreadableException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Problem problem;

    UnreadableException(Problem problem) {
        super(problem.fault().getClass().getSimpleName(), null, false, false);
        this.problem = problem;
    }

    /** Why. */
    public Problem problem() {
        return problem;
    }
}
