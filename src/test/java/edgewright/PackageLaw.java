package edgewright;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The two tables of DEVELOPERS.md, 'Packages' and 'Outside code', as a law over pairs of classes.
 *
 * <p>Everything that it knows stands in those tables. It refuses a text without them, a package that is named twice,
 * and a package that wants to use one that does not stand above it: directions without a circle are then a matter of
 * reading down the table.
 */
final class PackageLaw {

    private static final String BASE = "edgewright";

    /**
     * A package of ours: what it may use, each entry a package ({@code chart}), a room in one ({@code words.tree}) or a class
     * ({@code chart.Stitch}). A package opens no room inside it, and no room opens the package around it.
     */
    private record Ours(List<String> mayUse) {}

    /** An outside package: who may use it, each entry a package, a class, or a class name with an asterisk after it. */
    private record Outside(String prefix, List<String> users, String reason) {}

    private final Map<String, Ours> ours;
    private final List<Outside> outside;

    private PackageLaw(Map<String, Ours> ours, List<Outside> outside) {
        this.ours = ours;
        this.outside = outside;
    }

    /**
     * Reads both tables.
     *
     * @throws IllegalArgumentException when a table is missing or breaks its own rules, with the sentence to print
     */
    static PackageLaw read(String developersPage) {
        Map<String, Ours> ours = new LinkedHashMap<>();
        for (List<String> row : tableUnder(developersPage, "## Packages")) {
            String name = PageTable.quoted(row.get(0)).get(0);
            List<String> mayUse = PageTable.quoted(row.get(2));
            if (ours.containsKey(name)) {
                throw new IllegalArgumentException("package " + name + " stands twice in the table");
            }
            for (String used : mayUse) {
                if (!ours.containsKey(used) && !ours.containsKey(packageOfClass(used))) {
                    throw new IllegalArgumentException(
                            "package " + name + " wants " + used + ", which does not stand above it");
                }
            }
            ours.put(name, new Ours(mayUse));
        }
        List<Outside> outside = new ArrayList<>();
        for (List<String> row : tableUnder(developersPage, "## Outside code")) {
            for (String prefix : PageTable.quoted(row.get(0))) {
                outside.add(new Outside(prefix, PageTable.quoted(row.get(1)), row.get(2)));
            }
        }
        outside.sort(
                Comparator.comparingInt((Outside row) -> row.prefix().length()).reversed());
        return new PackageLaw(ours, outside);
    }

    /** The packages of the table, in its order; the project's own root package is {@code edgewright}. */
    Set<String> packages() {
        return ours.keySet();
    }

    /** What the row of this package opens to it: packages, rooms and classes. */
    List<String> openTo(String name) {
        return ours.get(name).mayUse();
    }

    /**
     * What the law has against one class using another.
     *
     * @param user full name of a class of ours
     * @param used full name of any class
     * @return one sentence with the reason, or nothing when the law allows it
     */
    Optional<String> objectionTo(String user, String used) {
        String from = ourPackage(user);
        if (!ours.containsKey(from)) {
            return Optional.of(user + " lies in package " + from + ", which is not in the table of DEVELOPERS.md");
        }
        if (used.startsWith(BASE + ".")) {
            return objectionToOurs(user, from, used);
        }
        for (Outside row : outside) {
            if (used.startsWith(row.prefix() + ".")) {
                return row.users().stream().anyMatch(entry -> covers(entry, user))
                        ? Optional.empty()
                        : Optional.of(user + " uses " + used + ", but only " + String.join(", ", row.users()) + " may: "
                                + row.reason());
            }
        }
        if (used.startsWith("java.") || used.startsWith("javax.")) {
            return Optional.empty();
        }
        return Optional.of(
                user + " uses " + used + ", and no row of 'Outside code' in DEVELOPERS.md opens that library");
    }

    private Optional<String> objectionToOurs(String user, String from, String used) {
        String to = ourPackage(used);
        List<String> mayUse = ours.get(from).mayUse();
        if (from.equals(to) || mayUse.stream().anyMatch(entry -> covers(entry, used))) {
            return Optional.empty();
        }
        return Optional.of(user + " uses " + used + ", but " + from + " may use "
                + (mayUse.isEmpty() ? "nothing of ours" : "only " + String.join(", ", mayUse)));
    }

    private static boolean covers(String entry, String className) {
        String local = className.substring(BASE.length() + 1);
        int nested = local.indexOf('$');
        String topLevel = nested < 0 ? local : local.substring(0, nested);
        if (entry.endsWith("*")) {
            return topLevel.startsWith(entry.substring(0, entry.length() - 1));
        }
        return entry.equals(topLevel) || entry.equals(ourPackage(className));
    }

    /**
     * {@code edgewright.chart.Stitch} lies in chart, {@code edgewright.words.tree.Run} in words.tree, {@code edgewright.Main}
     * in edgewright.
     */
    private static String ourPackage(String className) {
        int end = className.lastIndexOf('.');
        String name = className.substring(0, end);
        return name.equals(BASE) ? BASE : name.substring(BASE.length() + 1);
    }

    private static String packageOfClass(String entry) {
        int dot = entry.lastIndexOf('.');
        return dot < 0 ? entry : entry.substring(0, dot);
    }

    private static List<List<String>> tableUnder(String page, String heading) {
        List<List<String>> rows = PageTable.rowsUnder(page, heading);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("there is no table under '" + heading + "'");
        }
        return rows;
    }
}
