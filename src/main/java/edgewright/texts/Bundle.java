package edgewright.texts;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The texts of one resource bundle. A text may hold {0}, {1} and so on, up to {9}, which are filled in as they are: numbers
 * get no separators, and an apostrophe is an apostrophe.
 */
public final class Bundle {
    private static final Pattern GAP = Pattern.compile("\\{(\\d)}");
    private static final Bundle LISTS = of("edgewright.texts.lists");

    private final ResourceBundle resources;

    private Bundle(ResourceBundle resources) {
        this.resources = resources;
    }

    /**
     * The texts in a bundle of the program.
     *
     * @param name with full stops, without language and ending
     * @throws java.util.MissingResourceException if there is no such bundle
     */
    public static Bundle of(String name) {
        return new Bundle(ResourceBundle.getBundle(name, Locale.ROOT));
    }

    /**
     * The text of this name with its gaps filled.
     *
     * @throws java.util.MissingResourceException if there is no such text
     */
    public String text(String key, Object... values) {
        return filled(raw(key), values);
    }

    /**
     * The text of this name for one, {@code key.one}, or the one for none and for more, {@code key.more}; {0} is the number.
     *
     * @throws java.util.MissingResourceException if there is no such text
     */
    public String counted(String key, int number, Object... more) {
        Object[] values = new Object[more.length + 1];
        values[0] = number;
        System.arraycopy(more, 0, values, 1, more.length);
        return text(key + (number == 1 ? ".one" : ".more"), values);
    }

    /**
     * The text of this name as it stands in the bundle.
     *
     * @throws java.util.MissingResourceException if there is no such text
     */
    public String raw(String key) {
        return resources.getString(key);
    }

    /** A text that is in no bundle, with its gaps filled. */
    public static String filled(String text, Object... values) {
        return GAP.matcher(text)
                .replaceAll(gap -> Matcher.quoteReplacement(
                        String.valueOf(values[gap.group(1).charAt(0) - '0'])));
    }

    /** 'a, b and c'; empty for none. */
    public static String and(List<?> parts) {
        return list(parts, "and");
    }

    /** 'a, b or c'; empty for none. */
    public static String or(List<?> parts) {
        return list(parts, "or");
    }

    /** 'a, b, c'; empty for none. */
    public static String commas(List<?> parts) {
        return list(parts, "comma");
    }

    private static String list(List<?> parts, String last) {
        if (parts.isEmpty()) {
            return "";
        }
        String list = String.valueOf(parts.get(0));
        for (int i = 1; i < parts.size(); i++) {
            list = LISTS.text(i == parts.size() - 1 ? last : "comma", list, parts.get(i));
        }
        return list;
    }

    /** The text with a capital at its beginning. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
