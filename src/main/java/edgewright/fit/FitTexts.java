package edgewright.fit;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The texts of this package from its resource bundle. A text may hold {0}, {1} and so on, which are filled in as they are:
 * numbers get no separators, and an apostrophe is an apostrophe.
 */
final class FitTexts {
    private static final Pattern GAP = Pattern.compile("\\{(\\d)}");

    private final ResourceBundle bundle = ResourceBundle.getBundle("edgewright.fit.fit", Locale.ROOT);

    /** The text of this name with its gaps filled. */
    String text(String key, Object... values) {
        return GAP.matcher(bundle.getString(key))
                .replaceAll(gap -> Matcher.quoteReplacement(
                        String.valueOf(values[gap.group(1).charAt(0) - '0'])));
    }

    /** The text of this name for one, or the one for more; {0} is the number. */
    String counted(String key, int number, Object... more) {
        Object[] values = new Object[more.length + 1];
        values[0] = number;
        System.arraycopy(more, 0, values, 1, more.length);
        return text(key + (number == 1 ? ".one" : ".more"), values);
    }

    /** 'a, b and c'; empty for none. */
    String and(List<?> parts) {
        return list(parts, "list.and");
    }

    /** 'a, b or c'; empty for none. */
    String or(List<?> parts) {
        return list(parts, "list.or");
    }

    /** 'a, b, c'; empty for none. */
    String commas(List<?> parts) {
        return list(parts, "list.comma");
    }

    /** The text with a capital at its beginning. */
    static String capital(String text) {
        UnaryOperator<String> upper = letter -> letter.toUpperCase(Locale.ROOT);
        return text.isEmpty() ? text : upper.apply(text.substring(0, 1)) + text.substring(1);
    }

    private String list(List<?> parts, String last) {
        if (parts.isEmpty()) {
            return "";
        }
        String list = String.valueOf(parts.get(0));
        for (int i = 1; i < parts.size(); i++) {
            list = text(i == parts.size() - 1 ? last : "list.comma", list, parts.get(i));
        }
        return list;
    }
}
