package edgewright.cli;

/** Ends a command with {@link ExitStatus#BAD_INPUT} and one line. */
final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** @param line file, place and what was expected */
    BadInput(String line) {
        super(line, null, false, false);
    }
}
