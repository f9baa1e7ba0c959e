package edgewright.booklet.press;

import edgewright.booklet.page.FaceMetrics;
import edgewright.chart.Colour;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Draws the marks of a chart on a page, as paths and text. The page's coordinates must have been set to the drawing's
 * millimetres, y down. What is set once (colour, width of line) is written once as long as it stays the same.
 */
final class PdfSurface implements Surface {
    private static final int BUTT_CAP = 0;
    private static final int ROUND_CAP = 1;
    private static final int MITER_JOIN = 0;
    private static final int ROUND_JOIN = 1;

    private final PDPageContentStream content;
    private final EmbeddedFonts fonts;
    private Colour filling;
    private Colour stroking;
    private double widthMm;
    private Shape.Ends ends;
    private List<Double> dashMm = List.of();

    PdfSurface(PDPageContentStream content, EmbeddedFonts fonts) {
        this.content = content;
        this.fonts = fonts;
    }

    @Override
    public void fill(Shape.Fill fill) {
        write(() -> {
            fillWith(fill.colour());
            trace(fill.path());
            content.fillEvenOdd();
        });
    }

    /** Fills squares that do not overlap, all in one colour, as one path. */
    void squares(Colour colour, List<Area> squares) throws IOException {
        fillWith(colour);
        for (Area square : squares) {
            content.addRect(mm(square.xMm()), mm(square.yMm()), mm(square.widthMm()), mm(square.heightMm()));
        }
        content.fill();
    }

    @Override
    public void line(Shape.Line line) {
        write(() -> {
            strokeWith(line);
            trace(line.path());
            content.stroke();
        });
    }

    @Override
    public void text(Shape.Text text) {
        FaceMetrics face = text.weight() == Shape.Weight.BOLD
                ? fonts.typefaces().bold()
                : fonts.typefaces().text();
        double width = face.widthPt(text.text(), text.sizeMm());
        double before = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double alongX = new int[] {1, 0, -1, 0}[text.quarterTurns()];
        double alongY = new int[] {0, 1, 0, -1}[text.quarterTurns()];
        write(() -> {
            fillWith(text.colour());
            content.beginText();
            content.setTextMatrix(new Matrix(
                    (float) alongX,
                    (float) alongY,
                    (float) alongY,
                    (float) -alongX,
                    (float) (text.xMm() - before * alongX),
                    (float) (text.yMm() - before * alongY)));
            fonts.show(content, face, text.text(), text.sizeMm());
            content.endText();
        });
    }

    private void fillWith(Colour colour) throws IOException {
        if (!colour.equals(filling)) {
            content.setNonStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
            filling = colour;
        }
    }

    private void strokeWith(Shape.Line line) throws IOException {
        if (!line.colour().equals(stroking)) {
            Colour colour = line.colour();
            content.setStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
            stroking = colour;
        }
        if (line.widthMm() != widthMm) {
            content.setLineWidth((float) line.widthMm());
            widthMm = line.widthMm();
        }
        if (line.ends() != ends) {
            boolean round = line.ends() == Shape.Ends.ROUND;
            content.setLineCapStyle(round ? ROUND_CAP : BUTT_CAP);
            content.setLineJoinStyle(round ? ROUND_JOIN : MITER_JOIN);
            ends = line.ends();
        }
        if (!line.dashMm().equals(dashMm)) {
            dashMm = line.dashMm();
            float[] pattern = new float[dashMm.size()];
            for (int i = 0; i < pattern.length; i++) {
                pattern[i] = dashMm.get(i).floatValue();
            }
            content.setLineDashPattern(pattern, 0);
        }
    }

    private void trace(PenPath path) {
        path.trace(new PenPath.Pen() {
            @Override
            public void moveTo(double xMm, double yMm) {
                write(() -> content.moveTo(mm(xMm), mm(yMm)));
            }

            @Override
            public void lineTo(double xMm, double yMm) {
                write(() -> content.lineTo(mm(xMm), mm(yMm)));
            }

            @Override
            public void curveTo(double x1Mm, double y1Mm, double x2Mm, double y2Mm, double xMm, double yMm) {
                write(() -> content.curveTo(mm(x1Mm), mm(y1Mm), mm(x2Mm), mm(y2Mm), mm(xMm), mm(yMm)));
            }

            @Override
            public void close() {
                write(content::closePath);
            }
        });
    }

    /** A measure to the thousandth of a millimetre: finer than any printer, and short to write. */
    static float mm(double mm) {
        return (float) (Math.rint(mm * 1000) / 1000);
    }

    /** Writing that may fail; a {@link Surface} has no checked exception to say so. */
    private interface Writing {
        void run() throws IOException;
    }

    private static void write(Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
