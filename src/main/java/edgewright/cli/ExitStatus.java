package edgewright.cli;

/** The exit statuses of every command. */
final class ExitStatus {
    /** Done, and nothing is wrong. */
    static final int DONE = 0;

    /** Done, and the answer is 'no'. */
    static final int NO = 1;

    /** Bad input or usage: one line on standard error, and nothing was written. */
    static final int BAD_INPUT = 2;

    private ExitStatus() {}
}
