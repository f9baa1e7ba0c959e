package edgewright.assist.letter;

import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Squares that are filled, by row and column; columns count from 0, rows as in {@link PixelAlphabet}. */
final class Squares {
    private final NavigableMap<Integer, TreeSet<Integer>> rows = new TreeMap<>();

    /** Fills the squares that a letter has. */
    void fill(List<String> letter, int top, int firstColumn) {
        for (int i = 0; i < letter.size(); i++) {
            for (int j = 0; j < letter.get(i).length(); j++) {
                if (letter.get(i).charAt(j) == '#') {
                    rows.computeIfAbsent(top - i, row -> new TreeSet<>()).add(firstColumn + j);
                }
            }
        }
    }

    boolean isFilled(int row, int column) {
        return rows.containsKey(row) && rows.get(row).contains(column);
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    int lowest() {
        return rows.firstKey();
    }

    int highest() {
        return rows.lastKey();
    }

    /** One more than the last column that has a square. */
    int width() {
        return rows.values().stream().mapToInt(row -> row.last() + 1).max().orElse(0);
    }
}
