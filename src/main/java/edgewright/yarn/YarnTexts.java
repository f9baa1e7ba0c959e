package edgewright.yarn;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The texts of this package from its resource bundle. A text may hold {0}, {1} and so on, which are filled in as they are, and
 * two apostrophes for one.
 */
final class YarnTexts {
    private static final Pattern GAP = Pattern.compile("\\{(\\d)}");

    private final ResourceBundle bundle = ResourceBundle.getBundle("edgewright.yarn.yarn", Locale.ROOT);

    String text(String key, Object... values) {
        return GAP.matcher(bundle.getString(key).replace("''", "'"))
                .replaceAll(gap -> Matcher.quoteReplacement(
                        String.valueOf(values[gap.group(1).charAt(0) - '0'])));
    }

    /** 'a, b and c'; empty for none. */
    String and(List<?> parts) {
        return list(parts, "list.and");
    }

    /** 'a, b or c'; empty for none. */
    String or(List<?> parts) {
        return list(parts, "list.or");
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

    /** The number with that many digits . */
    static String number(double number, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", number);
    }

    /** The number with no more digits than it needs, two at most. */
    static String shortest(double number) {
        return number(number, 2).replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
