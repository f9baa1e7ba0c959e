package edgewright.words.setup;

/** What a part of a text is about, by its heading. */
public enum Part {
    /** Before any heading. */
    HEAD,
    MATERIALS,
    TENSION,
    SIZE,
    ABBREVIATIONS,
    SET_UP,
    ROUNDS,
    FINISHING,
    /** What is tried beside the border. */
    PRACTICE,
    OTHER
}
