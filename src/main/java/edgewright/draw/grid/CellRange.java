package edgewright.draw.grid;

/**
 * A rectangle of cells of a drawing, counted as they are drawn, rotation included: columns from the left and rows from the top,
 * from 0.
 *
 * @param columns 1 or more
 * @param rows 1 or more
 */
public record CellRange(int firstColumn, int firstRow, int columns, int rows) {
    public CellRange {
        if (firstColumn < 0 || firstRow < 0 || columns < 1 || rows < 1) {
            throw new IllegalArgumentException(
                    columns + " by " + rows + " cells from column " + firstColumn + ", row " + firstRow);
        }
    }

    /** The column after the last. */
    public int endColumn() {
        return firstColumn + columns;
    }

    /** The row after the last. */
    public int endRow() {
        return firstRow + rows;
    }

    /** Whether this cell is among them. */
    public boolean holds(int column, int row) {
        return firstColumn <= column && column < endColumn() && firstRow <= row && row < endRow();
    }
}
