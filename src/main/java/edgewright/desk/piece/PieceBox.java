package edgewright.desk.piece;

import edgewright.chart.Side;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * The drawing of a piece as a box with its border around it, in pixels before the scaling of the screen. The box has the
 * proportions of the piece as far as its fields leave room.
 *
 * @param inner the piece
 * @param outer the piece with its border
 * @param rounds the rounds of the border
 */
record PieceBox(Rectangle2D inner, Rectangle2D outer, int rounds) {
    /** Around the border, for the numbers of stitches. */
    static final int MARGIN_PX = 34;

    /** Below that, for what the marks mean. */
    static final int FOOT_PX = 18;

    private static final double NARROWEST = 0.72;
    private static final double WIDEST = 1.7;
    private static final double BORDER_PART = 0.085;
    private static final double MOST_BORDER_PX = 54;

    /**
     * The box in a drawing of that size.
     *
     * @param proportion the length of top and bottom divided by that of the sides; 0 if it is not known
     */
    static PieceBox in(double widthPx, double heightPx, double proportion, int rounds) {
        double width = Math.max(1, widthPx - 2 * MARGIN_PX);
        double height = Math.max(1, heightPx - 2 * MARGIN_PX - FOOT_PX);
        if (proportion > 0) {
            double shown = Math.max(NARROWEST, Math.min(WIDEST, proportion));
            if (width / height > shown) {
                width = Math.max(Math.min(width, height * shown), Math.min(width, FEWEST_WIDTH_PX));
            } else {
                height = Math.max(Math.min(height, width / shown), Math.min(height, FEWEST_HEIGHT_PX));
            }
        }
        double x = Math.round((widthPx - width) / 2);
        double y = Math.round((heightPx - FOOT_PX - height) / 2);
        double border = Math.round(Math.min(MOST_BORDER_PX, Math.min(width, height) * BORDER_PART));
        Rectangle2D outer = new Rectangle2D.Double(x, y, Math.round(width), Math.round(height));
        Rectangle2D inner = new Rectangle2D.Double(
                x + border, y + border, outer.getWidth() - 2 * border, outer.getHeight() - 2 * border);
        return new PieceBox(inner, outer, rounds);
    }

    /** Narrower, the fields would lie on each other. */
    private static final double FEWEST_WIDTH_PX = 590;

    private static final double FEWEST_HEIGHT_PX = 470;

    /** The width of the border. */
    double borderPx() {
        return inner.getX() - outer.getX();
    }

    /** The outer edge of a round; that of round 0, the base round, is the edge of the piece. */
    Rectangle2D round(int round) {
        double out = rounds == 0 ? 0 : borderPx() * round / rounds;
        return new Rectangle2D.Double(
                inner.getX() - out, inner.getY() - out, inner.getWidth() + 2 * out, inner.getHeight() + 2 * out);
    }

    /**
     * A point of a side.
     *
     * @param on the rectangle of a round
     * @param along how far along the side from the corner just turned, 0 to 1; makers travel anticlockwise
     * @param outPx how far outside the rectangle
     */
    static Point2D point(Rectangle2D on, Side side, double along, double outPx) {
        return switch (side) {
            case TOP -> new Point2D.Double(on.getMaxX() - along * on.getWidth(), on.getMinY() - outPx);
            case LEFT -> new Point2D.Double(on.getMinX() - outPx, on.getMinY() + along * on.getHeight());
            case BOTTOM -> new Point2D.Double(on.getMinX() + along * on.getWidth(), on.getMaxY() + outPx);
            case RIGHT -> new Point2D.Double(on.getMaxX() + outPx, on.getMaxY() - along * on.getHeight());
        };
    }
}
