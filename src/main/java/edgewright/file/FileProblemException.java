package edgewright.file;

import java.io.IOException;

/** A file could not be read or written. A file that was there before is as it was. */
public final class FileProblemException extends IOException {
    private static final long serialVersionUID = 1;

    private final transient Problem problem;

    FileProblemException(Problem problem, Throwable cause) {
        super(ProblemSentences.of(problem), cause);
        this.problem = problem;
    }

    /** What was wrong. */
    public Problem problem() {
        return problem;
    }
}
