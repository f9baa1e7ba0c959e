package edgewright.check;

/**
 * How many findings there are, told or not.
 *
 * @param errors those that hands cannot work
 * @param warnings the others
 */
public record FindingCount(int errors, int warnings) {
    /** None at all. */
    public static final FindingCount NONE = new FindingCount(0, 0);

    static final FindingCount ERROR = new FindingCount(1, 0);
    static final FindingCount WARNING = new FindingCount(0, 1);

    /** All of them. */
    public int all() {
        return errors + warnings;
    }

    /** These and others. */
    FindingCount and(FindingCount others) {
        return new FindingCount(errors + others.errors, warnings + others.warnings);
    }
}
