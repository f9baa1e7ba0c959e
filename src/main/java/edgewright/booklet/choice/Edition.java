package edgewright.booklet.choice;

/** For whose eyes, and for what paper and printer, a pattern is set. */
public enum Edition {
    /** In colour. */
    STANDARD,
    /**
     * For readers with low vision: one column of black type of 22 points on white, words before the chart, and a statement of
     * which published advice is met.
     */
    LARGE_PRINT,
    /** For one ink and for photocopies: no colours and no greys; yarns are hatched and named by their letters. */
    BLACK_AND_WHITE
}
