package edgewright.desk.ring;

import edgewright.draw.paint.Area;
import java.util.List;

/**
 * A square of the drawn paper.
 *
 * @param column from the left
 * @param row from the top
 */
record Square(int column, int row) {
    Square at(int columns, int rows) {
        return new Square(column + columns, row + rows);
    }

    /** The eight squares around it. */
    List<Square> around() {
        return List.of(at(-1, -1), at(0, -1), at(1, -1), at(-1, 0), at(1, 0), at(-1, 1), at(0, 1), at(1, 1));
    }

    /** Where it lies, of squared paper whose square 0, 0 begins at a point. */
    Area area(double xMm, double yMm, double cellMm) {
        return new Area(xMm + column * cellMm, yMm + row * cellMm, cellMm, cellMm);
    }
}
