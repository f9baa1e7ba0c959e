package edgewright.booklet;

import edgewright.draw.CellRange;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * How a chart that is larger than a page is cut into sheets. Neighbours share {@link #OVERLAP} columns or rows, so that a
 * stitch at the edge is seen with what is beside it and the sheets can be laid over one another.
 *
 * @param cellMm the side of a cell
 * @param across sheets side by side
 * @param down sheets one under the other
 * @param tiles the sheets that show something of the border, row by row from the top left
 */
record Tiling(double cellMm, int across, int down, List<Tile> tiles) {
    /** The columns or rows that two neighbours share: as many as a long stitch reaches. */
    static final int OVERLAP = 2;

    private static final double STEP_MM = 0.25;

    /**
     * One sheet.
     *
     * @param column counted from 0 at the left
     * @param row counted from 0 at the top
     */
    record Tile(int column, int row, CellRange cells) {}

    /** The four edges of a sheet. */
    enum Edge {
        LEFT(-1, 0),
        RIGHT(1, 0),
        TOP(0, -1),
        BOTTOM(0, 1);

        private final int columns;
        private final int rows;

        Edge(int columns, int rows) {
            this.columns = columns;
            this.rows = rows;
        }
    }

    /** What is to be cut up. Room for numbers around the cells is given in cells, since it grows with them. */
    record Work(int columns, int rows, double aroundColumns, double aroundRows) {}

    /** The largest cells, not over {@code largestMm}, with which the chart takes no more sheets than with the smallest. */
    static Tiling fewestSheets(
            Work work,
            double widthMm,
            double heightMm,
            double smallestMm,
            double largestMm,
            Predicate<CellRange> shows) {
        Tiling best = of(work, widthMm, heightMm, smallestMm, shows);
        for (double cell = smallestMm + STEP_MM; cell <= largestMm; cell += STEP_MM) {
            int across = sheets(work.columns(), capacity(widthMm, cell, work.aroundColumns()));
            int down = sheets(work.rows(), capacity(heightMm, cell, work.aroundRows()));
            if (across > best.across || down > best.down) {
                break;
            }
            best = of(work, widthMm, heightMm, cell, shows);
        }
        return best;
    }

    /** The sheets with cells of that size. */
    static Tiling of(Work work, double widthMm, double heightMm, double cellMm, Predicate<CellRange> shows) {
        int across = sheets(work.columns(), capacity(widthMm, cellMm, work.aroundColumns()));
        int down = sheets(work.rows(), capacity(heightMm, cellMm, work.aroundRows()));
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                int left = start(work.columns(), across, column);
                int top = start(work.rows(), down, row);
                CellRange cells = new CellRange(
                        left, top, end(work.columns(), across, column) - left, end(work.rows(), down, row) - top);
                if (shows.test(cells)) {
                    tiles.add(new Tile(column, row, cells));
                }
            }
        }
        return new Tiling(cellMm, across, down, List.copyOf(tiles));
    }

    /** The index of the sheet beyond an edge, if there is one. */
    OptionalInt beside(Tile tile, Edge edge) {
        return IntStream.range(0, tiles.size())
                .filter(i -> tiles.get(i).column() == tile.column() + edge.columns
                        && tiles.get(i).row() == tile.row() + edge.rows)
                .findFirst();
    }

    private static int capacity(double roomMm, double cellMm, double around) {
        return Math.max(OVERLAP + 1, (int) Math.floor(roomMm / cellMm - around + 1e-9));
    }

    private static int sheets(int cells, int capacity) {
        return cells <= capacity ? 1 : (cells - OVERLAP + capacity - OVERLAP - 1) / (capacity - OVERLAP);
    }

    /** Sheets are as equal as whole cells allow; the first cell of sheet i. */
    private static int start(int cells, int sheets, int i) {
        return (int) ((long) (cells - OVERLAP) * i / sheets);
    }

    private static int end(int cells, int sheets, int i) {
        return i == sheets - 1 ? cells : start(cells, sheets, i + 1) + OVERLAP;
    }
}
