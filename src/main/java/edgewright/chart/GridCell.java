package edgewright.chart;

/**
 * A cell of the square grid on which a border is drawn on paper.
 *
 * @param x columns to the right of the leftmost column of the piece; negative to the left of the piece
 * @param y rows below the topmost row of the piece; negative above the piece
 */
public record GridCell(int x, int y) {}
