package edgewright.draw.picture;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words in pictures, from {@code edgewright/draw/labels.properties}. */
final class PictureTexts {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("edgewright.draw.labels", Locale.ROOT);

    private PictureTexts() {}

    /** The text with this key, with the values put in. */
    static String of(String key, Object... values) {
        return new MessageFormat(BUNDLE.getString(key), Locale.ROOT).format(values);
    }
}
