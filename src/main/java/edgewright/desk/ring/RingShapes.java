package edgewright.desk.ring;

import edgewright.chart.Colour;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;

/**
 * How a ring looks: round one square a circle, round several a line about all of them. As on paper an error's is unbroken and a
 * warning's dashed, so that they differ without colour too.
 */
final class RingShapes {
    /** How far a ring reaches beyond its squares, in squares. */
    static final double REACH = 0.18;

    private static final double CIRCLE = 0.56;
    private static final double OUT = 0.08;
    private static final double HALO = 0.2;
    private static final double LINE = 0.11;
    /** The smallest size of type that can be read, in pixels. */
    private static final double SMALLEST_TYPE_PX = 9;

    private static final double TYPE = 0.36;

    private RingShapes() {}

    /** How large the numbers are. */
    static double typeMm(double cellMm, double pxPerMm) {
        return Math.max(TYPE * cellMm, SMALLEST_TYPE_PX / pxPerMm);
    }

    /** How high and wide the plate of a number is, with its middle at zero. */
    static Area plate(String number, double typeMm) {
        double height = 1.28 * typeMm;
        double width = Math.max(height, Lettering.widthMm(number, Shape.Weight.BOLD, typeMm) + 0.56 * typeMm);
        return new Area(-width / 2, -height / 2, width, height);
    }

    static List<Shape> of(Ring ring, double typeMm, Palette palette) {
        double c = ring.areas().get(0).widthMm();
        Colour colour = ring.isError() ? palette.error() : palette.warning();
        List<Double> dash = ring.isError() ? List.of() : List.of(0.2 * c, 0.13 * c);
        List<PenPath> paths = outline(ring, c);
        List<Shape> shapes = new ArrayList<>();
        paths.forEach(path -> shapes.add(new Shape.Line(path, HALO * c, palette.paper())));
        Shape.Ends ends = ring.isError() ? Shape.Ends.ROUND : Shape.Ends.CUT;
        paths.forEach(path -> shapes.add(new Shape.Line(path, LINE * c, colour, ends, dash)));
        ring.leader().ifPresent(ends4 -> {
            PenPath line = PenPath.line(ends4.get(0), ends4.get(1), ends4.get(2), ends4.get(3));
            shapes.add(new Shape.Line(line, 0.3 * typeMm, palette.paper()));
            shapes.add(new Shape.Line(line, 0.12 * typeMm, colour));
        });
        ring.plate().ifPresent(plate -> shapes.addAll(number(ring.number(), plate, typeMm, colour, palette)));
        return shapes;
    }

    private static List<Shape> number(String number, Area plate, double typeMm, Colour colour, Palette palette) {
        return List.of(
                new Shape.Fill(PenPath.rounded(plate, plate.heightMm() / 2), palette.paper()),
                new Shape.Fill(
                        PenPath.rounded(plate.grown(-0.1 * typeMm), plate.heightMm() / 2 - 0.1 * typeMm), colour),
                new Shape.Text(
                        number,
                        plate.middleXMm(),
                        plate.middleYMm() + Lettering.CAPITAL * typeMm / 2,
                        typeMm,
                        Shape.Weight.BOLD,
                        Shape.Anchor.MIDDLE,
                        0,
                        palette.paper()));
    }

    private static List<PenPath> outline(Ring ring, double c) {
        if (ring.squares().size() == 1) {
            Area cell = ring.areas().get(0);
            return List.of(PenPath.circle(cell.middleXMm(), cell.middleYMm(), CIRCLE * c));
        }
        Square first = ring.squares().iterator().next();
        Area some = ring.areas().stream()
                .reduce((one, two) ->
                        one.yMm() < two.yMm() || (one.yMm() == two.yMm() && one.xMm() < two.xMm()) ? one : two)
                .orElseThrow();
        Square top = ring.squares().stream()
                .reduce((one, two) ->
                        one.row() < two.row() || (one.row() == two.row() && one.column() < two.column()) ? one : two)
                .orElse(first);
        double x = some.xMm() - top.column() * c;
        double y = some.yMm() - top.row() * c;
        List<PenPath> edges = new ArrayList<>();
        for (Square square : ring.squares()) {
            Area at = square.area(x, y, c);
            for (int way = -1; way <= 1; way += 2) {
                if (!ring.squares().contains(square.at(0, way))) {
                    double level = (way < 0 ? at.yMm() : at.bottomMm()) + way * OUT * c;
                    edges.add(PenPath.line(
                            at.xMm() - beyond(ring, square.at(-1, 0), square.at(-1, way)) * c,
                            level,
                            at.rightMm() + beyond(ring, square.at(1, 0), square.at(1, way)) * c,
                            level));
                }
                if (!ring.squares().contains(square.at(way, 0))) {
                    double upright = (way < 0 ? at.xMm() : at.rightMm()) + way * OUT * c;
                    edges.add(PenPath.line(
                            upright,
                            at.yMm() - beyond(ring, square.at(0, -1), square.at(way, -1)) * c,
                            upright,
                            at.bottomMm() + beyond(ring, square.at(0, 1), square.at(way, 1)) * c));
                }
            }
        }
        return edges;
    }

    /**
     * How far an edge goes on beyond its square: out to a corner, not at all where the next square has one too, or less far
     * where another square of the ring stands in its way.
     */
    private static double beyond(Ring ring, Square next, Square inTheWay) {
        if (ring.squares().contains(inTheWay)) {
            return -OUT;
        }
        return ring.squares().contains(next) ? 0 : OUT;
    }
}
