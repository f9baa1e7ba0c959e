package edgewright.draw.picture;

import edgewright.chart.GridCell;
import edgewright.draw.grid.Rotation;
import java.util.IntSummaryStatistics;
import java.util.List;

/** The drawn part of the squared paper before it is rotated: its first column and row, and how many there are. */
record PaperBox(int x, int y, int columns, int rows) {
    static PaperBox around(List<GridCell> cells) {
        IntSummaryStatistics across = cells.stream().mapToInt(GridCell::x).summaryStatistics();
        IntSummaryStatistics down = cells.stream().mapToInt(GridCell::y).summaryStatistics();
        return new PaperBox(
                across.getMin(),
                down.getMin(),
                across.getMax() - across.getMin() + 1,
                down.getMax() - down.getMin() + 1);
    }

    /** The column of a cell after a rotation, from 0. */
    int columnOf(GridCell cell, Rotation rotation) {
        int u = cell.x() - x;
        int v = cell.y() - y;
        return switch (rotation) {
            case NONE -> u;
            case QUARTER -> rows - 1 - v;
            case HALF -> columns - 1 - u;
            case THREE_QUARTERS -> v;
        };
    }

    /** The row of a cell after a rotation, from 0. */
    int rowOf(GridCell cell, Rotation rotation) {
        int u = cell.x() - x;
        int v = cell.y() - y;
        return switch (rotation) {
            case NONE -> v;
            case QUARTER -> u;
            case HALF -> rows - 1 - v;
            case THREE_QUARTERS -> columns - 1 - u;
        };
    }

    /** The cell that lies in a column and a row after a rotation. */
    GridCell cellAt(int column, int row, Rotation rotation) {
        return switch (rotation) {
            case NONE -> new GridCell(x + column, y + row);
            case QUARTER -> new GridCell(x + row, y + rows - 1 - column);
            case HALF -> new GridCell(x + columns - 1 - column, y + rows - 1 - row);
            case THREE_QUARTERS -> new GridCell(x + columns - 1 - row, y + column);
        };
    }
}
