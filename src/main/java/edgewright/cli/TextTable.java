package edgewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** A table as lines of text, its columns two blanks apart: words flush left, numbers flush right. */
final class TextTable {
    private final List<List<String>> rows = new ArrayList<>();
    private final IntPredicate isNumber;

    /**
     * @param firstNumber the first column, from 0, that holds numbers; all after it do too
     */
    TextTable(int firstNumber) {
        isNumber = column -> column >= firstNumber;
    }

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    /** The lines, without blanks at their ends. */
    List<String> lines() {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int column = 0; column < widths.length; column++) {
                widths[column] = Math.max(widths[column], length(row.get(column)));
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < widths.length; column++) {
                String blanks = " ".repeat(widths[column] - length(row.get(column)));
                line.append(column == 0 ? "" : "  ")
                        .append(isNumber.test(column) ? blanks + row.get(column) : row.get(column) + blanks);
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
