package edgewright.words.page;

import edgewright.texts.Language;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A table of rounds in columns of plain text, parted by bars. Cells are wrapped; the lines of a row that go on have no round
 * number. Words that run across a row take the columns of the work as one.
 */
final class PlainTable {
    private static final String BAR = " | ";
    /** Round and yarn stand before the work. */
    private static final int NAMING = 2;
    /** The columns of the work: from the corner, repeat, to the corner. */
    private static final int WORK = 3;

    private final TextBlock.RoundsTable table;
    private final int[] widths;

    private PlainTable(TextBlock.RoundsTable table, int[] widths) {
        this.table = table;
        this.widths = widths;
    }

    /** The lines of the table; empty if it cannot be that narrow. */
    static Optional<List<String>> lines(TextBlock.RoundsTable table, int width) {
        int columns = table.columns().size();
        int room = width - BAR.length() * (columns - 1);
        int[] least = new int[columns];
        int[] most = new int[columns];
        measure(table.columns(), least, most);
        for (TextBlock.RoundRow row : table.rows()) {
            if (!row.across()) {
                measure(row.cells(), least, most);
            }
        }
        namingOf(table, least, most);
        if (Arrays.stream(least).sum() > room) {
            return Optional.empty();
        }
        int[] widths = shared(least, most, room);
        widenForWords(table, widths, room);
        PlainTable plain = new PlainTable(table, widths);
        return plain.holdsWordsAcross() ? Optional.of(plain.lines()) : Optional.empty();
    }

    private static void measure(List<String> cells, int[] least, int[] most) {
        for (int i = 0; i < cells.size(); i++) {
            least[i] = Math.max(least[i], longestWord(cells.get(i)));
            most[i] = Math.max(most[i], cells.get(i).length());
        }
    }

    /** Rows of words have the round, the yarn and the counts like all others. */
    private static void namingOf(TextBlock.RoundsTable table, int[] least, int[] most) {
        for (TextBlock.RoundRow row : table.rows()) {
            measure(row.cells().subList(0, NAMING), least, most);
            int counts = NAMING + WORK;
            if (row.across() && table.columns().size() > counts) {
                String cell = row.cells().get(NAMING + 1);
                least[counts] = Math.max(least[counts], longestWord(cell));
                most[counts] = Math.max(most[counts], cell.length());
            }
        }
    }

    private static int longestWord(String cell) {
        return Arrays.stream(cell.split(" ")).mapToInt(String::length).max().orElse(0);
    }

    /** Each column as wide as it would be, or what is left of the room shared among those that would be wider. */
    private static int[] shared(int[] least, int[] most, int room) {
        int[] widths = least.clone();
        int left = room - Arrays.stream(least).sum();
        for (boolean more = true; more && left > 0; ) {
            more = false;
            for (int i = 0; i < widths.length && left > 0; i++) {
                if (widths[i] < most[i]) {
                    widths[i]++;
                    left--;
                    more = true;
                }
            }
        }
        return widths;
    }

    /** Words that run across a row take what room is left. */
    private static void widenForWords(TextBlock.RoundsTable table, int[] widths, int room) {
        int longest = table.rows().stream()
                .filter(TextBlock.RoundRow::across)
                .mapToInt(row -> row.cells().get(NAMING).length())
                .max()
                .orElse(0);
        int across = Arrays.stream(widths, NAMING, NAMING + WORK).sum() + BAR.length() * (WORK - 1);
        int more = Math.min(room - Arrays.stream(widths).sum(), longest - across);
        for (int i = 0; i < more; i++) {
            widths[NAMING + i % WORK]++;
        }
    }

    private int acrossWidth() {
        return Arrays.stream(widths, NAMING, NAMING + WORK).sum() + BAR.length() * (WORK - 1);
    }

    private boolean holdsWordsAcross() {
        return table.rows().stream()
                .filter(TextBlock.RoundRow::across)
                .allMatch(row -> longestWord(row.cells().get(NAMING)) <= acrossWidth());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>(row(table.columns(), false));
        lines.add(Arrays.stream(widths).mapToObj("-"::repeat).collect(Collectors.joining(BAR)));
        for (TextBlock.RoundRow row : table.rows()) {
            lines.addAll(row(row.cells(), row.across()));
        }
        return lines;
    }

    private List<String> row(List<String> cells, boolean across) {
        List<List<String>> wrapped = new ArrayList<>();
        int most = 1;
        for (int i = 0; i < cells.size(); i++) {
            wrapped.add(wrap(cells.get(i), width(i, across)));
            most = Math.max(most, wrapped.get(i).size());
        }
        List<String> lines = new ArrayList<>();
        for (int at = 0; at < most; at++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < cells.size(); i++) {
                String part = at < wrapped.get(i).size() ? wrapped.get(i).get(at) : "";
                line.append(i == 0 ? "" : BAR).append(part);
                line.append(" ".repeat(width(i, across) - part.length()));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private int width(int cell, boolean across) {
        if (!across || cell < NAMING) {
            return widths[cell];
        }
        return cell == NAMING ? acrossWidth() : widths[cell + WORK - 1];
    }

    private static List<String> wrap(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines.stream().map(each -> each.replace(Language.NO_BREAK, ' ')).toList();
    }
}
