package edgewright.desk.picture;

import edgewright.draw.paint.Area;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Point2D;

/**
 * How the drawing lies on the canvas: where its sheet begins and how large a millimetre of it is.
 *
 * @param zero the upper left corner of the sheet on the canvas, in pixels before the scaling of the screen
 */
public record CanvasScale(Point zero, double pxPerMm) {
    /**
     * The sheet in the middle of a canvas of that size, but never nearer to its edges than the margin.
     *
     * @param grid where the cells lie on the sheet; they begin on a whole pixel, so every line between them is sharp
     */
    public static CanvasScale centred(
            double pxPerMm,
            double sheetWidthMm,
            double sheetHeightMm,
            Area grid,
            int widthPx,
            int heightPx,
            int marginPx) {
        double x = Math.max(marginPx, (widthPx - sheetWidthMm * pxPerMm) / 2);
        double y = Math.max(marginPx, (heightPx - sheetHeightMm * pxPerMm) / 2);
        double offX = grid.xMm() * pxPerMm;
        double offY = grid.yMm() * pxPerMm;
        Point zero = new Point((int) Math.round(Math.floor(x) + Math.ceil(offX) - offX), (int)
                Math.round(Math.floor(y) + Math.ceil(offY) - offY));
        return new CanvasScale(zero, pxPerMm);
    }

    public Point2D toMm(Point point) {
        return new Point2D.Double((point.x - zero.x) / pxPerMm, (point.y - zero.y) / pxPerMm);
    }

    /** The pixel in which a point of the sheet lies. */
    public Point toPx(Point2D mm) {
        return toPx(new Area(mm.getX(), mm.getY(), 0, 0)).getLocation();
    }

    public Area toMm(Rectangle px) {
        Point2D from = toMm(px.getLocation());
        return new Area(from.getX(), from.getY(), px.width / pxPerMm, px.height / pxPerMm);
    }

    /** The pixels that an area touches. */
    public Rectangle toPx(Area area) {
        // An edge that is a whole pixel but for the rounding of its number does not touch the next one.
        double hair = 0.01;
        int left = (int) Math.floor(zero.x + area.xMm() * pxPerMm + hair);
        int top = (int) Math.floor(zero.y + area.yMm() * pxPerMm + hair);
        int right = (int) Math.ceil(zero.x + area.rightMm() * pxPerMm - hair);
        int bottom = (int) Math.ceil(zero.y + area.bottomMm() * pxPerMm - hair);
        return new Rectangle(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    }
}
