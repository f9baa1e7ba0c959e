package edgewright.words.grammar;

/** What a line of a text was taken as. */
public enum LineKind {
    /** Nothing stands there, or a rule. */
    BLANK,
    /** The title of the pattern, or its designer. */
    TITLE,
    /** The heading of a part. */
    HEADING,
    /** A word and what it means. */
    ABBREVIATION,
    /** The yarns of the pattern. */
    YARNS,
    /** The terms. */
    TERMS,
    /** What holds for all rounds: the base round, the multiple, corners, counts. */
    SET_UP,
    /** The words of one round or more. */
    ROUND,
    /** How yarn is joined, cut and fastened. */
    TECHNIQUE,
    /** Words to people. */
    PROSE,
    /** It was not understood. */
    REFUSED
}
