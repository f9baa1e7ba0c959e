package edgewright.words.read;

/**
 * What could have stood at a place, as the key of a text and what it names.
 *
 * @param value empty if the text names nothing
 * @param other likewise, for a second thing
 */
record Expectation(String what, String value, String other) {
    static Expectation of(String what) {
        return new Expectation(what, "", "");
    }

    static Expectation of(String what, Object value) {
        return new Expectation(what, String.valueOf(value), "");
    }

    static Expectation of(String what, Object value, Object other) {
        return new Expectation(what, String.valueOf(value), String.valueOf(other));
    }
}
