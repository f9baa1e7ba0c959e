package edgewright.booklet;

import edgewright.texts.Bundle;

/** What the booklet says in its own words. */
final class Texts {
    private static final Bundle BUNDLE = Bundle.of("edgewright.booklet.booklet");

    private Texts() {}

    /** The text with this key and its gaps filled. */
    static String of(String key, Object... values) {
        return BUNDLE.text(key, values);
    }

    /** The text for one, or the one for more; {0} is the number. */
    static String counted(String key, int number, Object... more) {
        return BUNDLE.counted(key, number, more);
    }
}
