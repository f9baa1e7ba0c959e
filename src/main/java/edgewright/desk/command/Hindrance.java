package edgewright.desk.command;

/** Why a command is not possible now. */
public enum Hindrance {
    /** No edit was made that could be undone. */
    NOTHING_TO_UNDO,
    /** No edit was undone that could be done again. */
    NOTHING_TO_REDO,
    NOTHING_MARKED,
    /** What is marked lies on both arms. */
    ROUND_THE_CORNER,
    /** A repeat with an odd number of stitches has no halves, and sides of two kinds no mirror between them. */
    NO_SUCH_MIRROR,
    NO_FINDINGS,
    /** No finding is chosen, or nothing is known to help against it. */
    NO_REMEDY,
    /** No finding is chosen, or no other is of its rule. */
    SINGLE_FINDING,
    /** Every section has the length of its round. */
    ALREADY_EVEN,
    /** Some sections have not the length of their round. */
    RAGGED,
    LAST_COLUMN,
    /** A repeat of one stitch cannot be shifted. */
    SHORT_REPEAT,
    MOST_ROUNDS,
    /** The chosen rounds are the outermost or the innermost. */
    NO_ROUND_BEYOND,
    LAST_ROUND,
    MOST_YARNS,
    NO_YARN_CHOSEN,
    /** The chosen yarn is the last one, or a round is worked in it. */
    YARN_NEEDED,
    LARGEST,
    SMALLEST,
    /** A file is being opened or saved. */
    FILE_BUSY,
    /** A pattern, a picture or a proof is being made. */
    EXPORT_BUSY,
    /** The chart has errors. */
    ERRORS,
    /** No round can be started in the column of the cursor. */
    NO_START_HERE,
    /** There is only one chart on the desk. */
    ONE_CHART,
    /** The start page lies over the charts, so what would happen to one is not seen. */
    NO_CHART_SHOWN,
    START_PAGE_SHOWN,
    /** No pattern, picture or text was made since the desk was opened. */
    NOTHING_MADE
}
