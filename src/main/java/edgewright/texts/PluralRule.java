package edgewright.texts;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which amounts are said in which plural form. The rules stand in the language's own file in the notation of CLDR, one for each
 * category but {@code other}, which is all the rest, for example {@code n % 10 = 2..4 and n % 100 != 12..14}.
 *
 * <p>Only whole amounts are counted, so of the operands {@code n} and {@code i} are the amount and {@code v}, {@code w},
 * {@code f}, {@code t}, {@code c} and {@code e} are 0.
 *
 * @see <a href="https://unicode.org/reports/tr35/tr35-numbers.html#Language_Plural_Rules">the notation</a>
 */
final class PluralRule {
    private static final String OTHER = "other";
    private static final List<String> CATEGORIES = List.of("zero", "one", "two", "few", "many");
    private static final Pattern RELATION = Pattern.compile(
            "([nivwftce])\\s*(?:%\\s*(\\d+)\\s*)?(!?=)\\s*(\\d+(?:\\.\\.\\d+)?(?:\\s*,\\s*\\d+(?:\\.\\.\\d+)?)*)");

    private final List<Category> categories;

    private PluralRule(List<Category> categories) {
        this.categories = categories;
    }

    /** The rules that a language's own messages state. */
    static PluralRule of(Messages language) {
        List<Category> categories = new ArrayList<>();
        for (String name : CATEGORIES) {
            if (language.has("plural-" + name)) {
                categories.add(category(name, language.text("plural-" + name)));
            }
        }
        return new PluralRule(List.copyOf(categories));
    }

    /**
     * One category with its rule.
     *
     * @throws IllegalArgumentException if that is no rule
     */
    private static Category category(String name, String rule) {
        List<List<Relation>> ways = new ArrayList<>();
        for (String way : rule.split("\\bor\\b")) {
            List<Relation> all = new ArrayList<>();
            for (String part : way.split("\\band\\b")) {
                all.add(relation(name, part.strip()));
            }
            ways.add(List.copyOf(all));
        }
        return new Category(name, List.copyOf(ways));
    }

    private static Relation relation(String name, String text) {
        Matcher relation = RELATION.matcher(text);
        if (!relation.matches()) {
            throw new IllegalArgumentException("plural-" + name + ": no relation of CLDR: " + text);
        }
        List<Range> ranges = new ArrayList<>();
        for (String range : relation.group(4).split("\\s*,\\s*")) {
            String[] ends = range.split("\\.\\.");
            ranges.add(new Range(Long.parseLong(ends[0]), Long.parseLong(ends[ends.length - 1])));
        }
        return new Relation(
                "ni".contains(relation.group(1)),
                relation.group(2) == null ? 0 : Long.parseLong(relation.group(2)),
                relation.group(3).equals("="),
                List.copyOf(ranges));
    }

    /** The category of an amount; a negative one goes by its distance from 0. */
    String of(long amount) {
        long n = Math.abs(amount);
        for (Category category : categories) {
            if (category.holds(n)) {
                return category.name();
            }
        }
        return OTHER;
    }

    /** A category, and the ways in which an amount belongs to it; all relations of one way must hold. */
    private record Category(String name, List<List<Relation>> ways) {
        boolean holds(long n) {
            for (List<Relation> way : ways) {
                if (allHold(way, n)) {
                    return true;
                }
            }
            return false;
        }

        private static boolean allHold(List<Relation> way, long n) {
            for (Relation relation : way) {
                if (!relation.holds(n)) {
                    return false;
                }
            }
            return true;
        }
    }

    /** Whether the amount, or its fraction that is 0, divided by the modulus, lies in one of the ranges. */
    private record Relation(boolean ofAmount, long modulus, boolean within, List<Range> ranges) {
        boolean holds(long n) {
            long operand = ofAmount ? n : 0;
            long value = modulus == 0 ? operand : operand % modulus;
            for (Range range : ranges) {
                if (range.from() <= value && value <= range.to()) {
                    return within;
                }
            }
            return !within;
        }
    }

    private record Range(long from, long to) {}
}
