package edgewright.booklet.sheets;

import edgewright.draw.grid.CellRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
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

    /** How far the brackets of the repeats stand off the inner edge of an arm, in cells. */
    private static final int BRACKETS = 3;

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

    /**
     * A corner that is to be cut up. Room for numbers around the cells is given in cells, since it grows with them.
     *
     * @param arm how many columns the upright arm takes from the left, and how many rows the level one from the top; the
     *     cells beyond both are empty
     */
    record Work(int columns, int rows, int arm, double aroundColumns, double aroundRows) {}

    /** Columns or rows side by side, the last not included. */
    private record Span(int first, int end) {}

    /** The fewest sheets that cells of an allowed size can be had on, and of those the ones with the largest cells. */
    static Tiling fewestSheets(Work work, double widthMm, double heightMm, double smallestMm, double largestMm) {
        Tiling best = of(work, widthMm, heightMm, smallestMm);
        for (double cell = smallestMm + STEP_MM; cell <= largestMm; cell += STEP_MM) {
            Tiling larger = of(work, widthMm, heightMm, cell);
            if (larger.tiles.size() <= best.tiles.size()) {
                best = larger;
            }
        }
        return best;
    }

    /**
     * The fewest sheets with cells of that size. Sheets are as equal as can be, or the cut follows the inner edge of an arm
     * where that leaves more of them empty.
     */
    static Tiling of(Work work, double widthMm, double heightMm, double cellMm) {
        int capacityAcross = capacity(widthMm, cellMm, work.aroundColumns());
        int capacityDown = capacity(heightMm, cellMm, work.aroundRows());
        Tiling best = null;
        for (List<Span> columns : cuts(work.columns(), work.arm(), capacityAcross)) {
            for (List<Span> rows : cuts(work.rows(), work.arm(), capacityDown)) {
                Tiling tiling = of(columns, rows, work.arm(), cellMm);
                if (best == null || tiling.tiles.size() < best.tiles.size()) {
                    best = tiling;
                }
            }
        }
        return best;
    }

    private static Tiling of(List<Span> columns, List<Span> rows, int arm, double cellMm) {
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < columns.size(); column++) {
                Span across = columns.get(column);
                Span down = rows.get(row);
                // What a sheet shares with the one at its left, or above it, is no reason for it.
                int own = column == 0 ? 0 : across.first() + OVERLAP;
                int ownDown = row == 0 ? 0 : down.first() + OVERLAP;
                if (own < arm || ownDown < arm) {
                    int right = ownDown < arm ? across.end() : Math.min(across.end(), arm + BRACKETS);
                    int foot = own < arm ? down.end() : Math.min(down.end(), arm + BRACKETS);
                    CellRange cells =
                            new CellRange(across.first(), down.first(), right - across.first(), foot - down.first());
                    tiles.add(new Tile(column, row, cells));
                }
            }
        }
        return new Tiling(cellMm, columns.size(), rows.size(), List.copyOf(tiles));
    }

    /**
     * These sheets for a corner that is seen in a mirror, numbered from the left again.
     *
     * @param columns of the corner
     */
    Tiling mirrored(int columns) {
        List<Tile> mirrored = tiles.stream()
                .map(tile -> new Tile(
                        across - 1 - tile.column(),
                        tile.row(),
                        new CellRange(
                                columns - tile.cells().endColumn(),
                                tile.cells().firstRow(),
                                tile.cells().columns(),
                                tile.cells().rows())))
                .sorted(Comparator.comparingInt(Tile::row).thenComparingInt(Tile::column))
                .toList();
        return new Tiling(cellMm, across, down, mirrored);
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

    private static List<List<Span>> cuts(int cells, int arm, int capacity) {
        if (arm >= cells) {
            return List.of(evenly(0, cells, capacity));
        }
        List<Span> alongArm = new ArrayList<>(evenly(0, arm, capacity));
        alongArm.addAll(evenly(Math.max(0, arm - OVERLAP), cells, capacity));
        return List.of(evenly(0, cells, capacity), alongArm);
    }

    /** Spans with at most so many cells, all of one size as far as whole cells allow. */
    private static List<Span> evenly(int first, int end, int capacity) {
        int cells = end - first;
        int sheets = cells <= capacity ? 1 : (cells - OVERLAP + capacity - OVERLAP - 1) / (capacity - OVERLAP);
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < sheets; i++) {
            int from = (int) ((long) (cells - OVERLAP) * i / sheets);
            int to = (int) ((long) (cells - OVERLAP) * (i + 1) / sheets) + OVERLAP;
            spans.add(new Span(first + Math.max(0, from), i == sheets - 1 ? end : first + to));
        }
        return spans;
    }
}
