package edgewright.words.read;

/** Reading cannot go on; never leaves the reader. */
final class ReadingStopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient ReadingProblem problem;

    ReadingStopped(ReadingProblem problem) {
        super(problem.toString(), null, false, false);
        this.problem = problem;
    }

    ReadingProblem problem() {
        return problem;
    }
}
