package edgewright.draw.raster;

import edgewright.chart.Colour;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.FontStack;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Shape.Ends;
import edgewright.draw.paint.Surface;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * Draws shapes in pixels, on a picture or on a window.
 *
 * <p>The graphics it is given must be scaled so that one unit is a millimetre of the drawing, and not turned or sheared. Upright
 * rectangles and level or upright lines are set on whole pixels, so that neighbouring cells meet without a seam and no line is
 * blurred; a line is never thinner than a pixel. All else is smoothed.
 */
public final class RasterSurface implements Surface {
    private final Graphics2D graphics;
    private final AffineTransform toPixels;
    private final double scale;
    private final StampPixels stamps;
    private boolean onPixels;

    /**
     * @param graphics scaled to millimetres. The surface changes its colour, stroke, font, hints and transform as it goes; its
     *     clip stays. Whoever goes on drawing with it makes a copy first
     */
    public RasterSurface(Graphics2D graphics) {
        this(graphics, new StampPixels());
    }

    /**
     * @param graphics as above
     * @param stamps what is known of stamps from earlier pictures
     */
    public RasterSurface(Graphics2D graphics, StampPixels stamps) {
        this.stamps = stamps;
        this.graphics = graphics;
        this.toPixels = graphics.getTransform();
        this.scale = toPixels.getScaleX();
        this.onPixels = true;
        smooth();
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    /** An area as a shape, in millimetres, for whoever goes on drawing over marks. */
    public static Rectangle2D boxOf(Area area) {
        return new Rectangle2D.Double(area.xMm(), area.yMm(), area.widthMm(), area.heightMm());
    }

    @Override
    public void fill(Shape.Fill fill) {
        graphics.setColor(color(fill.colour()));
        if (fill.path().isUpright()) {
            Area area = fill.path().bounds();
            Point2D from = pixels(area.xMm(), area.yMm());
            Point2D to = pixels(area.rightMm(), area.bottomMm());
            long x = Math.round(from.getX());
            long y = Math.round(from.getY());
            rectangle(x, y, Math.round(to.getX()) - x, Math.round(to.getY()) - y);
        } else {
            smooth();
            graphics.fill(outline(fill.path(), Path2D.WIND_EVEN_ODD));
        }
    }

    @Override
    public void line(Shape.Line line) {
        graphics.setColor(color(line.colour()));
        Area bounds = line.path().bounds();
        boolean straight = line.path().isUpright() && (bounds.widthMm() == 0 || bounds.heightMm() == 0);
        if (straight && line.dashMm().isEmpty() && line.ends() == Ends.CUT) {
            straight(bounds, line.widthMm());
        } else {
            smooth();
            graphics.setStroke(stroke(line));
            graphics.draw(outline(line.path(), Path2D.WIND_NON_ZERO));
        }
    }

    @Override
    public void text(Shape.Text text) {
        smooth();
        graphics.setColor(color(text.colour()));
        // Set large and scaled down: fonts come in sizes that a millimetre is too coarse for.
        double factor = text.sizeMm() / RasterFonts.SIZE;
        double width = Lettering.widthMm(text.text(), text.weight(), RasterFonts.SIZE);
        double left = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        graphics.translate(text.xMm(), text.yMm());
        graphics.rotate(Math.PI / 2 * text.quarterTurns());
        graphics.scale(factor, factor);
        double x = left;
        for (FontStack.Run run : FontStack.runs(text.text())) {
            Font font = RasterFonts.of(run.typeface(), text.weight());
            // Glyph by glyph: what is shaped is not as wide as it was measured.
            GlyphVector glyphs = font.createGlyphVector(graphics.getFontRenderContext(), run.text());
            graphics.drawGlyphVector(glyphs, (float) x, 0);
            x += RasterFonts.SIZE * run.width(text.weight());
        }
        graphics.setTransform(toPixels);
    }

    /**
     * Set on whole pixels as upright rectangles are, so stamps that touch meet without a seam; drawn once for each number of pixels
     * that it takes, then copied.
     */
    @Override
    public void stamped(Shape.Stamped stamped) {
        Area area = stamped.bounds();
        Point2D from = pixels(area.xMm(), area.yMm());
        Point2D to = pixels(area.rightMm(), area.bottomMm());
        int x = (int) Math.round(from.getX());
        int y = (int) Math.round(from.getY());
        int width = (int) Math.round(to.getX()) - x;
        int height = (int) Math.round(to.getY()) - y;
        if (width > 0 && height > 0) {
            whole();
            graphics.drawImage(stamps.of(stamped.stamp(), width, height), x, y, null);
        }
    }

    /** A level or upright line as a row of whole pixels. */
    private void straight(Area bounds, double widthMm) {
        long thick = Math.max(1, Math.round(widthMm * scale));
        Point2D from = pixels(bounds.xMm(), bounds.yMm());
        Point2D to = pixels(bounds.rightMm(), bounds.bottomMm());
        if (bounds.widthMm() == 0) {
            long y = Math.round(from.getY());
            rectangle(Math.round(from.getX() - thick / 2.0), y, thick, Math.round(to.getY()) - y);
        } else {
            long x = Math.round(from.getX());
            rectangle(x, Math.round(from.getY() - thick / 2.0), Math.round(to.getX()) - x, thick);
        }
    }

    private void rectangle(long x, long y, long width, long height) {
        whole();
        graphics.fillRect((int) x, (int) y, (int) width, (int) height);
    }

    private void whole() {
        if (!onPixels) {
            graphics.setTransform(new AffineTransform());
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
            onPixels = true;
        }
    }

    /** Back from whole pixels; changed only where it must be, since that is slow and cells come by the thousand. */
    private void smooth() {
        if (onPixels) {
            graphics.setTransform(toPixels);
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            onPixels = false;
        }
    }

    private Point2D pixels(double xMm, double yMm) {
        return toPixels.transform(new Point2D.Double(xMm, yMm), null);
    }

    private static BasicStroke stroke(Shape.Line line) {
        boolean round = line.ends() == Ends.ROUND;
        int cap = round ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
        int join = round ? BasicStroke.JOIN_ROUND : BasicStroke.JOIN_MITER;
        float width = (float) line.widthMm();
        if (line.dashMm().isEmpty()) {
            return new BasicStroke(width, cap, join);
        }
        float[] dash = new float[line.dashMm().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = line.dashMm().get(i).floatValue();
        }
        return new BasicStroke(width, cap, join, 10, dash, 0);
    }

    private static Path2D outline(PenPath path, int rule) {
        Path2D outline = new Path2D.Double(rule);
        path.trace(new PenPath.Pen() {
            @Override
            public void moveTo(double x, double y) {
                outline.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                outline.lineTo(x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                outline.curveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void close() {
                outline.closePath();
            }
        });
        return outline;
    }

    private static Color color(Colour colour) {
        return new Color(colour.rgb());
    }
}
