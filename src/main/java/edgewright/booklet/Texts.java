package edgewright.booklet;

import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the booklet says in its own words; they lie in the bundle {@code edgewright/booklet/booklet}. A text may hold {0}, {1}
 * and so on, which are filled in as they are: numbers get no separators, and an apostrophe is an apostrophe.
 */
final class Texts {
    private static final Pattern GAP = Pattern.compile("\\{(\\d)}");
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("edgewright.booklet.booklet", Locale.ROOT);

    private Texts() {}

    /** The text with this key and its gaps filled. */
    static String of(String key, Object... values) {
        Matcher gaps = GAP.matcher(BUNDLE.getString(key));
        return gaps.replaceAll(gap ->
                Matcher.quoteReplacement(String.valueOf(values[gap.group(1).charAt(0) - '0'])));
    }

    /** The text for one, or the one for more; {0} is the number. */
    static String counted(String key, int number) {
        return of(key + (number == 1 ? ".one" : ".more"), number);
    }
}
