package edgewright.words.others;

/** What a part of a text is about, by its heading. */
enum Part {
    /** Before any heading. */
    HEAD,
    MATERIALS,
    TENSION,
    SIZE,
    ABBREVIATIONS,
    SET_UP,
    ROUNDS,
    FINISHING,
    OTHER
}
