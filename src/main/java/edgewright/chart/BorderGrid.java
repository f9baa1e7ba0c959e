package edgewright.chart;

/**
 * The whole border on squared paper, seen from the right side: round r is the square ring r cells out from the base round,
 * which lies around the piece. Each side has S(r) cells, and the corner chains are the one cell on the diagonal, so the ring
 * outside fits exactly.
 *
 * <p>A right-handed maker travels anticlockwise: the top is worked from right to left, the left side downwards, the bottom
 * from left to right and the right side upwards. In this grid a fabric column is a straight line away from the piece.
 *
 * @param repeats how often the repeat is worked on each side, from 0. For a border that lies flat opposite sides are equal;
 *     the grid is only for such.
 */
public record BorderGrid(BorderShape border, PerSide<Integer> repeats) {
    public BorderGrid {
        if (!repeats.oppositeSidesAreAlike()) {
            throw new IllegalArgumentException("opposite sides must be equal to lie on squared paper: " + repeats);
        }
    }

    /** The cells across the piece: the stitches of the top in the base round. */
    public int width() {
        return stitches(Side.TOP);
    }

    /** The cells down the piece: the stitches of the left side in the base round. */
    public int height() {
        return stitches(Side.LEFT);
    }

    private int stitches(Side side) {
        return border.on(side).stitches(0, repeats.get(side));
    }

    /** The cell of a stitch of a side. The stitch may lie beyond the side's end by any number; then so does the cell. */
    public GridCell cellOf(Side side, SidePlace place) {
        int r = place.round();
        int p = place.stitch();
        return switch (side) {
            case TOP -> new GridCell(width() + r - p, -r - 1);
            case LEFT -> new GridCell(-r - 1, p - r - 1);
            case BOTTOM -> new GridCell(p - r - 1, height() + r);
            case RIGHT -> new GridCell(width() + r, height() + r - p);
        };
    }

    /** The cell that lies so many cells from this one of a side, straight towards the piece. */
    public GridCell below(Side side, GridCell cell, int cells) {
        return switch (side) {
            case TOP -> new GridCell(cell.x(), cell.y() + cells);
            case LEFT -> new GridCell(cell.x() + cells, cell.y());
            case BOTTOM -> new GridCell(cell.x(), cell.y() - cells);
            case RIGHT -> new GridCell(cell.x() - cells, cell.y());
        };
    }

    /**
     * The cell of the corner chains at the end of a side.
     *
     * @param after the side that ends in this corner
     */
    public GridCell cornerCell(Side after, int round) {
        int left = -round - 1;
        int right = width() + round;
        int top = -round - 1;
        int bottom = height() + round;
        return switch (after) {
            case TOP -> new GridCell(left, top);
            case LEFT -> new GridCell(left, bottom);
            case BOTTOM -> new GridCell(right, bottom);
            case RIGHT -> new GridCell(right, top);
        };
    }

    /** What lies in a cell; the reverse of {@link #cellOf} and {@link #cornerCell}. Every cell holds something. */
    public GridContent contentOf(GridCell cell) {
        int out = Math.max(beyond(cell.x(), width()), beyond(cell.y(), height()));
        if (out == 0) {
            return new GridContent.Piece();
        }
        int r = out - 1;
        boolean left = cell.x() == -r - 1;
        boolean right = cell.x() == width() + r;
        boolean top = cell.y() == -r - 1;
        boolean bottom = cell.y() == height() + r;
        if (top && left) {
            return new GridContent.CornerChains(Side.TOP, r);
        }
        if (left && bottom) {
            return new GridContent.CornerChains(Side.LEFT, r);
        }
        if (bottom && right) {
            return new GridContent.CornerChains(Side.BOTTOM, r);
        }
        if (right && top) {
            return new GridContent.CornerChains(Side.RIGHT, r);
        }
        if (top) {
            return new GridContent.SideStitch(Side.TOP, new SidePlace(r, width() + r - cell.x()));
        }
        if (left) {
            return new GridContent.SideStitch(Side.LEFT, new SidePlace(r, cell.y() + r + 1));
        }
        if (bottom) {
            return new GridContent.SideStitch(Side.BOTTOM, new SidePlace(r, cell.x() + r + 1));
        }
        return new GridContent.SideStitch(Side.RIGHT, new SidePlace(r, height() + r - cell.y()));
    }

    /** How many cells a coordinate lies outside 0 to {@code size - 1}; 0 inside. */
    private static int beyond(int coordinate, int size) {
        return Math.max(0, Math.max(-coordinate, coordinate - size + 1));
    }
}
