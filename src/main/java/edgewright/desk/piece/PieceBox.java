package edgewright.desk.piece;

import edgewright.chart.HookHand;
import edgewright.chart.Side;
import java.awt.Dimension;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * The drawing of a piece as a box with its border around it, in pixels before the scaling of the screen. The box has the
 * proportions of the piece as far as its fields leave room, and its middle is that of the drawing.
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
     * @param fields the room that the fields need within the piece
     */
    static PieceBox in(double widthPx, double heightPx, double proportion, int rounds, Dimension fields) {
        double width = available(widthPx, 0);
        double height = available(heightPx, FOOT_PX);
        double border = border(width, height);
        if (proportion > 0) {
            double shown = Math.max(NARROWEST, Math.min(WIDEST, proportion));
            if (width / height > shown) {
                width = Math.min(width, Math.max(height * shown, fields.width + 2 * border));
            } else {
                height = Math.min(height, Math.max(width / shown, fields.height + 2 * border));
            }
        }
        double x = Math.round((widthPx - width) / 2);
        double y = Math.round((heightPx - FOOT_PX - height) / 2);
        Rectangle2D outer = new Rectangle2D.Double(x, y, Math.round(width), Math.round(height));
        Rectangle2D inner = new Rectangle2D.Double(
                x + border, y + border, outer.getWidth() - 2 * border, outer.getHeight() - 2 * border);
        return new PieceBox(inner, outer, rounds);
    }

    /**
     * What lies within the piece in a drawing of that size, whatever proportions it has. There the fields have places that do not
     * go by what is typed into them.
     */
    static Rectangle2D within(double widthPx, double heightPx, Dimension fields) {
        Rectangle2D narrow = in(widthPx, heightPx, NARROWEST, 1, fields).inner();
        Rectangle2D wide = in(widthPx, heightPx, WIDEST, 1, fields).inner();
        return narrow.createIntersection(wide);
    }

    /** The least size of a drawing around these fields. */
    static Dimension around(Dimension fields) {
        double within = Math.min(fields.width, fields.height);
        double border = Math.ceil(Math.min(MOST_BORDER_PX, within * BORDER_PART / (1 - 2 * BORDER_PART))) + 1;
        double more = 2 * (border + MARGIN_PX);
        return new Dimension((int) (fields.width + more), (int) (fields.height + more) + FOOT_PX);
    }

    private static double available(double px, int footPx) {
        return Math.max(1, px - 2 * MARGIN_PX - footPx);
    }

    private static double border(double width, double height) {
        return Math.round(Math.min(MOST_BORDER_PX, Math.min(width, height) * BORDER_PART));
    }

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
     * @param along how far along the side from the corner that this hand has just turned, 0 to 1
     * @param outPx how far outside the rectangle
     */
    static Point2D point(Rectangle2D on, Side side, HookHand hand, double along, double outPx) {
        return hand == HookHand.LEFT ? point(on, side, 1 - along, outPx) : point(on, side, along, outPx);
    }

    /** The same for the right hand, which goes round anticlockwise. */
    private static Point2D point(Rectangle2D on, Side side, double along, double outPx) {
        return switch (side) {
            case TOP -> new Point2D.Double(on.getMaxX() - along * on.getWidth(), on.getMinY() - outPx);
            case LEFT -> new Point2D.Double(on.getMinX() - outPx, on.getMinY() + along * on.getHeight());
            case BOTTOM -> new Point2D.Double(on.getMinX() + along * on.getWidth(), on.getMaxY() + outPx);
            case RIGHT -> new Point2D.Double(on.getMaxX() + outPx, on.getMaxY() - along * on.getHeight());
        };
    }
}
