package edgewright.booklet;

import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * What the content of a page paints, in the order in which it is painted, as any program that shows the file must do it:
 * operators are followed, through forms too. It knows nothing of charts and shares nothing with what writes the page.
 *
 * <p>Points of 1/72 inch, x from the left edge of the page, y from its top downwards.
 */
public final class PaintedPage extends PDFGraphicsStreamEngine {
    /** Things painted through one window: a picture. */
    public record Window(Rectangle2D bounds, List<Painted> painted) {}

    /** A stroke, a fill, or one string of text. */
    public sealed interface Painted {
        /** {@code #rrggbb}. */
        String colour();
    }

    /**
     * A path.
     *
     * @param filled else stroked
     * @param widthPt of the pen; 0 for a fill
     * @param cut whether a stroke ends where its path ends; else its ends are round
     * @param hidden whether a part of it lies out of sight, beyond a window or the bounds of a form
     */
    public record Path(
            boolean filled,
            List<Part> parts,
            String colour,
            double widthPt,
            boolean cut,
            boolean dashed,
            boolean hidden)
            implements Painted {}

    /**
     * A part of a path.
     *
     * @param steps a letter for each step, as in the page's content: m, l, c, h
     * @param points of the steps, those that steer curves among them
     */
    record Part(String steps, List<Point2D> points) {
        Rectangle2D bounds() {
            Rectangle2D bounds =
                    new Rectangle2D.Double(points.get(0).getX(), points.get(0).getY(), 0, 0);
            points.forEach(bounds::add);
            return bounds;
        }
    }

    /** A string where its base line begins and ends. */
    public record Lettered(String text, Point2D from, Point2D to, double sizePt, String colour) implements Painted {}

    private final FormContents forms = new FormContents();
    private final double height;
    private final List<Window> windows = new ArrayList<>();
    private final List<Integer> depths = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private StringBuilder steps = new StringBuilder();
    private List<Point2D> points = new ArrayList<>();
    private int depth;
    private boolean clipping;
    private StringBuilder text = new StringBuilder();
    private Point2D textFrom;
    private Point2D textTo;

    private PaintedPage(PDPage page) {
        super(page);
        height = page.getMediaBox().getHeight();
    }

    /** What is painted through each window of a page, from the first to the last. */
    public static List<Window> windows(PDPage page) throws IOException {
        PaintedPage painted = new PaintedPage(page);
        painted.processPage(page);
        return painted.windows;
    }

    /** As the engine does it (ISO 32000-1, 8.10.1), but for parsing the form each time. */
    @Override
    public void showForm(PDFormXObject form) throws IOException {
        if (form.getResources().getCOSObject().size() > 0 || !forms.isOfPathsAlone(form)) {
            super.showForm(form);
            return;
        }
        Deque<PDGraphicsState> saved = saveGraphicsStack();
        Matrix place = getGraphicsState().getCurrentTransformationMatrix();
        place.concatenate(form.getMatrix());
        getGraphicsState().intersectClippingPath(form.getBBox().transform(place));
        for (FormContents.Step step : forms.steps(form)) {
            processOperator(step.operator(), step.operands());
        }
        restoreGraphicsStack(saved);
    }

    @Override
    public void saveGraphicsState() {
        depth++;
        super.saveGraphicsState();
    }

    @Override
    public void restoreGraphicsState() {
        depth--;
        if (!depths.isEmpty() && depth < depths.get(depths.size() - 1)) {
            depths.remove(depths.size() - 1);
        }
        super.restoreGraphicsState();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        endPart();
        step('m', p0);
        step('l', p1);
        step('l', p2);
        step('l', p3);
        closePath();
    }

    @Override
    public void drawImage(PDImage image) {
        throw new IllegalStateException("a chart has no images");
    }

    @Override
    public void shadingFill(COSName name) {
        throw new IllegalStateException("a chart has no shading");
    }

    @Override
    public void clip(int rule) {
        clipping = true;
    }

    @Override
    public void moveTo(float x, float y) {
        endPart();
        step('m', new Point2D.Float(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
        step('l', new Point2D.Float(x, y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        step('c', new Point2D.Float(x1, y1));
        points.add(down(new Point2D.Float(x2, y2)));
        points.add(down(new Point2D.Float(x3, y3)));
    }

    @Override
    public Point2D getCurrentPoint() {
        return points.isEmpty() ? null : down(points.get(points.size() - 1));
    }

    @Override
    public void closePath() {
        steps.append('h');
        endPart();
    }

    @Override
    public void endPath() {
        endPart();
        if (clipping) {
            Rectangle2D bounds = parts.get(0).bounds();
            windows.add(new Window(bounds, new ArrayList<>()));
            depths.add(depth);
            double foot = height - bounds.getMaxY();
            getGraphicsState()
                    .intersectClippingPath(new Area(
                            new Rectangle2D.Double(bounds.getX(), foot, bounds.getWidth(), bounds.getHeight())));
        }
        clipping = false;
        parts.clear();
    }

    @Override
    public void strokePath() {
        paint(false);
    }

    @Override
    public void fillPath(int rule) {
        paint(true);
    }

    @Override
    public void fillAndStrokePath(int rule) {
        throw new IllegalStateException("a chart fills or strokes");
    }

    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException problem)
            throws IOException {
        throw problem;
    }

    @Override
    protected void showText(byte[] string) throws IOException {
        text = new StringBuilder();
        textFrom = null;
        super.showText(string);
        if (textFrom != null && !depths.isEmpty()) {
            PDGraphicsState state = getGraphicsState();
            double size = state.getTextState().getFontSize()
                    * state.getCurrentTransformationMatrix().getScalingFactorX();
            last().add(new Lettered(text.toString(), textFrom, textTo, size, hex(state.getNonStrokingColor())));
        }
    }

    @Override
    protected void showGlyph(Matrix rendering, PDFont font, int code, Vector displacement) throws IOException {
        if (textFrom == null) {
            textFrom = down(new Point2D.Float(rendering.getTranslateX(), rendering.getTranslateY()));
        }
        textTo = down(rendering.transformPoint(displacement.getX(), displacement.getY()));
        text.append(font.toUnicode(code));
    }

    private void step(char step, Point2D to) {
        steps.append(step);
        points.add(down(to));
    }

    private Point2D down(Point2D point) {
        return new Point2D.Double(point.getX(), height - point.getY());
    }

    private void endPart() {
        if (!points.isEmpty()) {
            parts.add(new Part(steps.toString(), List.copyOf(points)));
        }
        steps = new StringBuilder();
        points = new ArrayList<>();
    }

    private List<Painted> last() {
        return windows.get(windows.size() - 1).painted();
    }

    private void paint(boolean filled) {
        endPart();
        if (!depths.isEmpty()) {
            PDGraphicsState state = getGraphicsState();
            double width = filled ? 0 : transformWidth(state.getLineWidth());
            last().add(new Path(
                    filled,
                    List.copyOf(parts),
                    hex(filled ? state.getNonStrokingColor() : state.getStrokingColor()),
                    width,
                    state.getLineCap() == 0,
                    state.getLineDashPattern().getDashArray().length > 0,
                    isHidden(width / 2)));
        }
        parts.clear();
    }

    private boolean isHidden(double penPt) {
        Rectangle2D seen = getGraphicsState().getCurrentClippingPath().getBounds2D();
        double play = 0.01;
        for (Part part : parts) {
            Rectangle2D painted = part.bounds();
            if (painted.getMinX() - penPt < seen.getMinX() - play
                    || painted.getMaxX() + penPt > seen.getMaxX() + play
                    || height - painted.getMinY() + penPt > seen.getMaxY() + play
                    || height - painted.getMaxY() - penPt < seen.getMinY() - play) {
                return true;
            }
        }
        return false;
    }

    private static String hex(PDColor colour) {
        try {
            return String.format("#%06x", colour.toRGB());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
