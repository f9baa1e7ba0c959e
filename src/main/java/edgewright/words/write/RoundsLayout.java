package edgewright.words.write;

/** How the rounds of a pattern are laid out. The tree is the same, and so is what is made. */
public enum RoundsLayout {
    /** Each round in sentences, under its name. */
    SENTENCES,
    /** Each round as a row of a table: what is worked from the corner, the repeat, what is worked to the corner, the count. */
    TABLE
}
