package edgewright.booklet.press;

import edgewright.chart.Colour;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import java.util.List;

/**
 * Writes shapes as the operators of a page's content (ISO 32000-1, 8.5), measured from a zero of their own: what is drawn in
 * two places alike gives the same text for both. The unit is the millimetre, y down.
 */
final class StampSurface implements Surface {
    private final StringBuilder out = new StringBuilder(256);
    private final double zeroXMm;
    private final double zeroYMm;
    private Colour filling;
    private Colour stroking;
    private double widthMm;
    private Shape.Ends ends;
    private List<Double> dashMm = List.of();

    StampSurface(double zeroXMm, double zeroYMm) {
        this.zeroXMm = zeroXMm;
        this.zeroYMm = zeroYMm;
    }

    /** What was drawn so far. */
    String operators() {
        return out.toString();
    }

    @Override
    public void fill(Shape.Fill fill) {
        if (!fill.colour().equals(filling)) {
            filling = fill.colour();
            colour(filling).append("rg\n");
        }
        trace(fill.path());
        out.append("f*\n");
    }

    @Override
    public void line(Shape.Line line) {
        if (!line.colour().equals(stroking)) {
            stroking = line.colour();
            colour(stroking).append("RG\n");
        }
        if (line.widthMm() != widthMm) {
            widthMm = line.widthMm();
            number(widthMm).append("w\n");
        }
        if (line.ends() != ends) {
            ends = line.ends();
            out.append(ends == Shape.Ends.ROUND ? "1 J 1 j\n" : "0 J 0 j\n");
        }
        if (!line.dashMm().equals(dashMm)) {
            dashMm = line.dashMm();
            out.append("[ ");
            dashMm.forEach(this::number);
            out.append("] 0 d\n");
        }
        trace(line.path());
        out.append("S\n");
    }

    /** @throws UnsupportedOperationException always: text is set on the page, where it is found and read */
    @Override
    public void text(Shape.Text text) {
        throw new UnsupportedOperationException(text.text());
    }

    private StringBuilder colour(Colour colour) {
        number(colour.red() / 255.0);
        number(colour.green() / 255.0);
        return number(colour.blue() / 255.0);
    }

    private void trace(PenPath path) {
        path.trace(new PenPath.Pen() {
            @Override
            public void moveTo(double xMm, double yMm) {
                point(xMm, yMm).append("m\n");
            }

            @Override
            public void lineTo(double xMm, double yMm) {
                point(xMm, yMm).append("l\n");
            }

            @Override
            public void curveTo(double x1Mm, double y1Mm, double x2Mm, double y2Mm, double xMm, double yMm) {
                point(x1Mm, y1Mm);
                point(x2Mm, y2Mm);
                point(xMm, yMm).append("c\n");
            }

            @Override
            public void close() {
                out.append("h\n");
            }
        });
    }

    private StringBuilder point(double xMm, double yMm) {
        number(xMm - zeroXMm);
        return number(yMm - zeroYMm);
    }

    /** A number to the thousandth, as short as it can be written, and a blank. */
    private StringBuilder number(double number) {
        long thousandths = Math.round(number * 1000);
        if (thousandths < 0) {
            out.append('-');
            thousandths = -thousandths;
        }
        out.append(thousandths / 1000);
        long rest = thousandths % 1000;
        if (rest > 0) {
            out.append('.').append((char) ('0' + rest / 100));
            if (rest % 100 > 0) {
                out.append((char) ('0' + rest / 10 % 10));
            }
            if (rest % 10 > 0) {
                out.append((char) ('0' + rest % 10));
            }
        }
        return out.append(' ');
    }
}
