package edgewright.file;

import edgewright.file.fault.Problem;
import edgewright.file.fault.ProblemSentences;
import java.io.IOException;

/**
 * A file could not be read or written. A file that was there before is as it was. The message is for developers; people read
 * what {@link ProblemSentences} makes of the problem.
 */
public final class FileProblemException extends IOException {
    private static final long serialVersionUID = 1;

    private final transient Problem problem;

    FileProblemException(Problem problem, Throwable cause) {
        super(problem.toString(), cause);
        this.problem = problem;
    }

    /** What was wrong. */
    public Problem problem() {
        return problem;
    }
}
