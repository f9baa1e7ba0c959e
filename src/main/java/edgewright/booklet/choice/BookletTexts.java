package edgewright.booklet.choice;

import edgewright.texts.Bundle;

/** What the booklet says in its own words. */
public final class BookletTexts {
    private static final Bundle BUNDLE = Bundle.of("edgewright.booklet.booklet");

    private BookletTexts() {}

    /** The text with this key and its gaps filled. */
    public static String of(String key, Object... values) {
        return BUNDLE.text(key, values);
    }

    /** The text for one, or the one for more; {0} is the number. */
    public static String counted(String key, int number, Object... more) {
        return BUNDLE.counted(key, number, more);
    }
}
