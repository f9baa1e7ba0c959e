package edgewright.draw.svg;

import edgewright.draw.marks.Mark;
import edgewright.draw.paint.FontStack;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Shape.Ends;
import edgewright.draw.paint.Shape.Weight;
import edgewright.draw.paint.Stamp;
import edgewright.draw.paint.Surface;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Turns shapes into those of SVG, in their order. What is the same for nearly all of them is said by {@link #USUAL}. */
final class SvgSurface implements Surface {
    /** What holds for every shape that does not say otherwise. */
    static final String USUAL = " fill-rule=\"evenodd\" stroke-linecap=\"round\" stroke-linejoin=\"round\"";

    /** Texts of more letters must keep their length in another face, or they run into what stands beside them. */
    private static final int FEW_LETTERS = 4;

    private final List<SvgShape> shapes = new ArrayList<>();
    private final boolean foreignFace;

    private SvgSurface(boolean foreignFace) {
        this.foreignFace = foreignFace;
    }

    /**
     * The shapes of a mark.
     *
     * @param foreignFace whether its texts are set in whatever face the page has
     */
    static List<SvgShape> shapesOf(Mark mark, boolean foreignFace) {
        SvgSurface surface = new SvgSurface(foreignFace);
        mark.drawOn(surface);
        return surface.shapes;
    }

    /** The shapes of a stamp, as they lie about its own zero. */
    static List<SvgShape> shapesOf(Stamp stamp) {
        SvgSurface surface = new SvgSurface(false);
        stamp.shapes().forEach(shape -> shape.drawOn(surface));
        return surface.shapes;
    }

    @Override
    public void fill(Shape.Fill fill) {
        add(" fill=\"" + fill.colour() + "\"", fill.path(), fill.path().isUpright());
    }

    @Override
    public void line(Shape.Line line) {
        String ends = line.ends() == Ends.ROUND ? "" : " stroke-linecap=\"butt\" stroke-linejoin=\"miter\"";
        String dash = line.dashMm().isEmpty()
                ? ""
                : line.dashMm().stream()
                        .map(SvgNumbers::mm)
                        .collect(Collectors.joining(" ", " stroke-dasharray=\"", "\""));
        String stroke = " fill=\"none\" stroke=\"" + line.colour() + "\" stroke-width=\""
                + SvgNumbers.mm(line.widthMm()) + "\"";
        add(stroke + ends + dash, line.path(), false);
    }

    @Override
    public void text(Shape.Text text) {
        String anchor = switch (text.anchor()) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        String style = " font-size=\"" + SvgNumbers.mm(text.sizeMm()) + "\" font-weight=\""
                + (text.weight() == Weight.BOLD ? 700 : 400) + "\" text-anchor=\"" + anchor + "\" fill=\""
                + text.colour() + "\"";
        String length = foreignFace && text.text().length() > FEW_LETTERS
                ? " textLength=\"" + SvgNumbers.mm(Lettering.widthMm(text.text(), text.weight(), text.sizeMm()))
                        + "\" lengthAdjust=\"spacingAndGlyphs\""
                : "";
        // A page has faces of its own, which may have what the bundled ones lack.
        String words = foreignFace ? text.text() : FontStack.printable(text.text());
        SvgShape.Form letters = new SvgShape.Letters(SvgPicture.escape(words), length, 90 * text.quarterTurns());
        shapes.add(new SvgShape(style, text.xMm(), text.yMm(), letters));
    }

    private void add(String style, PenPath path, boolean square) {
        RelativePen pen = new RelativePen();
        path.trace(pen);
        SvgShape.Form form = new SvgShape.Path(pen.steps.toString(), pen.x, pen.y, square);
        shapes.add(new SvgShape(style, pen.zeroXMm, pen.zeroYMm, form));
    }

    /**
     * Writes a path from its first point on. Every step goes from where the rounded steps before it have come to, so what was
     * rounded does not add up.
     */
    private static final class RelativePen implements PenPath.Pen {
        private final StringBuilder steps = new StringBuilder();
        private boolean begun;
        private double zeroXMm;
        private double zeroYMm;
        private long x;
        private long y;
        private long partX;
        private long partY;

        @Override
        public void moveTo(double xMm, double yMm) {
            if (begun) {
                steps.append('m').append(pair(xMm, yMm));
            } else {
                begun = true;
                zeroXMm = xMm;
                zeroYMm = yMm;
            }
            stand(xMm, yMm);
            partX = x;
            partY = y;
        }

        @Override
        public void lineTo(double xMm, double yMm) {
            long right = right(xMm);
            long down = down(yMm);
            if (down == 0) {
                steps.append('h').append(SvgNumbers.of(right));
            } else if (right == 0) {
                steps.append('v').append(SvgNumbers.of(down));
            } else {
                steps.append('l').append(SvgNumbers.pair(right, down));
            }
            stand(xMm, yMm);
        }

        @Override
        public void curveTo(double x1Mm, double y1Mm, double x2Mm, double y2Mm, double xMm, double yMm) {
            String second = pair(x2Mm, y2Mm);
            String end = pair(xMm, yMm);
            steps.append('c').append(pair(x1Mm, y1Mm));
            steps.append(second.startsWith("-") ? "" : " ").append(second);
            steps.append(end.startsWith("-") ? "" : " ").append(end);
            stand(xMm, yMm);
        }

        @Override
        public void close() {
            steps.append('z');
            x = partX;
            y = partY;
        }

        private String pair(double xMm, double yMm) {
            return SvgNumbers.pair(right(xMm), down(yMm));
        }

        private long right(double xMm) {
            return SvgNumbers.micrometres(xMm - zeroXMm) - x;
        }

        private long down(double yMm) {
            return SvgNumbers.micrometres(yMm - zeroYMm) - y;
        }

        private void stand(double xMm, double yMm) {
            x += right(xMm);
            y += down(yMm);
        }
    }
}
