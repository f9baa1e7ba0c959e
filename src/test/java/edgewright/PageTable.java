package edgewright;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the tables of DEVELOPERS.md that are law: three columns, the first of which names code between backticks. */
final class PageTable {

    private static final int COLUMNS = 3;
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

    private PageTable() {}

    /**
     * The rows under a heading of the second level, each a list of three cells; none when there is no such table.
     *
     * @throws IllegalArgumentException for a row with another number of cells
     */
    static List<List<String>> rowsUnder(String page, String heading) {
        List<List<String>> rows = new ArrayList<>();
        boolean under = false;
        for (String line : page.lines().toList()) {
            if (line.startsWith("## ")) {
                under = line.equals(heading);
            } else if (under && line.startsWith("| `")) {
                rows.add(cells(line, heading));
            }
        }
        return rows;
    }

    private static List<String> cells(String line, String heading) {
        String inside = line.strip().replaceAll("^\\||\\|$", "");
        List<String> cells =
                Arrays.stream(inside.split("\\|", -1)).map(String::strip).toList();
        if (cells.size() != COLUMNS) {
            throw new IllegalArgumentException("under '" + heading + "' a row needs " + COLUMNS + " columns: " + line);
        }
        return cells;
    }

    /** What stands between backticks in a cell, in its order. */
    static List<String> quoted(String cell) {
        List<String> names = new ArrayList<>();
        Matcher matcher = QUOTED.matcher(cell);
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }
}
