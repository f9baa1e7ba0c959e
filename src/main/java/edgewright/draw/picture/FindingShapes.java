package edgewright.draw.picture;

import edgewright.chart.Colour;
import edgewright.check.Severity;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Rings and numbers. An error's ring is unbroken, a warning's dashed, so that they differ without colour too. */
public final class FindingShapes {
    private static final double SIZE = 0.36;

    private FindingShapes() {}

    /** A ring round a cell, with the numbers of its flags at its upper right. */
    static List<Shape> ring(Area cell, List<Emphasis.Flag> flags, Palette palette) {
        double c = cell.widthMm();
        PenPath ring = PenPath.circle(cell.middleXMm(), cell.middleYMm(), 0.56 * c);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Line(ring, 0.2 * c, palette.paper()));
        List<Double> dash = isError(flags) ? List.of() : List.of(0.2 * c, 0.13 * c);
        shapes.add(new Shape.Line(ring, 0.11 * c, colour(flags, palette), Shape.Ends.CUT, dash));
        shapes.addAll(badge(cell.rightMm(), cell.yMm(), c, flags, palette));
        return shapes;
    }

    /** The numbers of flags in a small plate with its middle at a point. */
    public static List<Shape> badge(double xMm, double yMm, double cellMm, List<Emphasis.Flag> flags, Palette palette) {
        String numbers = numbers(flags);
        double size = SIZE * cellMm;
        double height = 0.46 * cellMm;
        double width = Math.max(height, Lettering.widthMm(numbers, Shape.Weight.BOLD, size) + 0.2 * cellMm);
        Area plate = new Area(xMm - width / 2, yMm - height / 2, width, height);
        return List.of(
                new Shape.Fill(PenPath.rounded(plate.grown(0.05 * cellMm), height), palette.paper()),
                new Shape.Fill(PenPath.rounded(plate, height / 2), colour(flags, palette)),
                new Shape.Text(
                        numbers,
                        xMm,
                        yMm + Lettering.CAPITAL * size / 2,
                        size,
                        Shape.Weight.BOLD,
                        Shape.Anchor.MIDDLE,
                        0,
                        palette.paper()));
    }

    /** The numbers with commas between them; three and more in a row as the first and the last. */
    private static String numbers(List<Emphasis.Flag> flags) {
        int first = flags.get(0).number();
        int last = flags.get(flags.size() - 1).number();
        if (flags.size() > 2 && last - first == flags.size() - 1) {
            return first + "\u2013" + last;
        }
        return flags.stream().map(flag -> Integer.toString(flag.number())).collect(Collectors.joining(","));
    }

    private static Colour colour(List<Emphasis.Flag> flags, Palette palette) {
        return isError(flags) ? palette.error() : palette.warning();
    }

    private static boolean isError(List<Emphasis.Flag> flags) {
        return flags.stream().anyMatch(flag -> flag.severity() == Severity.ERROR);
    }
}
