package edgewright.desk.work;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The texts of the window, from the bundle {@code edgewright/desk/texts}.
 *
 * <p>Every text is a {@link MessageFormat} pattern, also one without values, so an apostrophe is always written twice. Numbers
 * are formatted without regard to the machine's language, since the texts are in one language.
 */
public final class DeskTexts {
    /** The language of the texts. */
    public static final Locale LANGUAGE = Locale.ENGLISH;

    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("edgewright.desk.texts", Locale.ROOT);

    private DeskTexts() {}

    /**
     * The text with this key, its values put in.
     *
     * @throws java.util.MissingResourceException if there is no such text; a test looks for every key in the code
     */
    public static String of(String key, Object... values) {
        return new MessageFormat(BUNDLE.getString(key), Locale.ROOT).format(values);
    }

    /** Whether there is a text with this key. */
    public static boolean has(String key) {
        return BUNDLE.containsKey(key);
    }
}
