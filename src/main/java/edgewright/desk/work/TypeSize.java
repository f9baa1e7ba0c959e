package edgewright.desk.work;

/** How large the letters of the desk are beside those of the machine's own windows. */
public enum TypeSize {
    PERCENT_100,
    PERCENT_125,
    PERCENT_150,
    PERCENT_175,
    PERCENT_200;

    /** Of the size that the machine has for its windows. */
    public int percent() {
        return 100 + 25 * ordinal();
    }
}
