package edgewright.draw;

import edgewright.draw.Shape.Ends;
import edgewright.draw.Shape.Weight;
import java.util.stream.Collectors;

/** Draws shapes as SVG elements, lengths rounded to thousandths of a millimetre. */
final class SvgSurface implements Surface {
    private final StringBuilder svg;

    SvgSurface(StringBuilder svg) {
        this.svg = svg;
    }

    @Override
    public void fill(Shape.Fill fill) {
        svg.append("<path fill-rule=\"evenodd\" fill=\"").append(fill.colour()).append("\" d=\"");
        path(fill.path());
        svg.append("\"/>");
    }

    @Override
    public void line(Shape.Line line) {
        boolean round = line.ends() == Ends.ROUND;
        svg.append("<path fill=\"none\" stroke=\"")
                .append(line.colour())
                .append("\" stroke-width=\"")
                .append(mm(line.widthMm()))
                .append(
                        round
                                ? "\" stroke-linecap=\"round\" stroke-linejoin=\"round\""
                                : "\" stroke-linecap=\"butt\" stroke-linejoin=\"miter\"");
        if (!line.dashMm().isEmpty()) {
            String dash = line.dashMm().stream().map(SvgSurface::mm).collect(Collectors.joining(" "));
            svg.append(" stroke-dasharray=\"").append(dash).append('"');
        }
        svg.append(" d=\"");
        path(line.path());
        svg.append("\"/>");
    }

    @Override
    public void text(Shape.Text text) {
        String x = mm(text.xMm());
        String y = mm(text.yMm());
        svg.append("<text x=\"").append(x).append("\" y=\"").append(y);
        if (text.quarterTurns() > 0) {
            svg.append("\" transform=\"rotate(")
                    .append(90 * text.quarterTurns())
                    .append(' ')
                    .append(x)
                    .append(' ')
                    .append(y)
                    .append(')');
        }
        String anchor = switch (text.anchor()) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        svg.append("\" font-size=\"")
                .append(mm(text.sizeMm()))
                .append("\" font-weight=\"")
                .append(text.weight() == Weight.BOLD ? 700 : 400)
                .append("\" text-anchor=\"")
                .append(anchor)
                .append("\" fill=\"")
                .append(text.colour())
                .append("\">")
                .append(SvgPicture.escape(text.text()))
                .append("</text>");
    }

    private void path(PenPath path) {
        path.trace(new PenPath.Pen() {
            @Override
            public void moveTo(double x, double y) {
                step('M', x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                step('L', x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                step('C', x1, y1);
                step(' ', x2, y2);
                step(' ', x, y);
            }

            @Override
            public void close() {
                svg.append('Z');
            }
        });
    }

    private void step(char letter, double x, double y) {
        svg.append(letter).append(mm(x)).append(' ').append(mm(y));
    }

    private static String mm(double millimetres) {
        return Numbers.mm(millimetres, 3);
    }
}
