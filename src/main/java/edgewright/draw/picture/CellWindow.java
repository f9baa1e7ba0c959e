package edgewright.draw.picture;

import edgewright.draw.grid.CellRange;

/** Columns and rows as drawn, up to the ends but without them; none where an end does not come after the first. */
record CellWindow(int firstColumn, int firstRow, int endColumn, int endRow) {
    static CellWindow of(CellRange range) {
        return new CellWindow(range.firstColumn(), range.firstRow(), range.endColumn(), range.endRow());
    }

    CellWindow within(CellWindow other) {
        return new CellWindow(
                Math.max(firstColumn, other.firstColumn),
                Math.max(firstRow, other.firstRow),
                Math.min(endColumn, other.endColumn),
                Math.min(endRow, other.endRow));
    }

    boolean isEmpty() {
        return firstColumn >= endColumn || firstRow >= endRow;
    }
}
