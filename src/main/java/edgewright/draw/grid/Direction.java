package edgewright.draw.grid;

/** A way to go on the drawing, as it is seen. */
public enum Direction {
    LEFT(-1, 0),
    UP(0, -1),
    RIGHT(1, 0),
    DOWN(0, 1);

    private final int columns;
    private final int rows;

    Direction(int columns, int rows) {
        this.columns = columns;
        this.rows = rows;
    }

    /** How many columns to the right one step goes. */
    public int columns() {
        return columns;
    }

    /** How many rows down one step goes. */
    public int rows() {
        return rows;
    }
}
