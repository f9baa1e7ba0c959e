package edgewright.draw.picture;

import edgewright.chart.Colour;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;

/** The lines of a picture's squared paper, drawn between points of the paper before it is rotated. */
public final class SquaredPaper {
    static final double GRID = 0.022;
    /** How long the line after a tenth stitch is, from the outer edge of its round. */
    public static final double TENTH_LENGTH = 0.5;

    private static final double TENTH = 0.13;

    /** Paper around it, for where all is of one ink it may lie on hatching; else it is a calm grey, seen on dark and on light. */
    private static final double TENTH_CASING = 0.22;

    private static final double EDGE = 0.075;
    private static final double REPEAT = 0.1;
    private static final double REPEAT_CASING = 0.2;

    private final CellLayout layout;
    private final Palette palette;
    private final Frame paper;
    private final List<Mark> lines = new ArrayList<>();

    public SquaredPaper(CellLayout layout, Palette palette) {
        this.layout = layout;
        this.palette = palette;
        this.paper = layout.paperFrame();
    }

    /** The lines drawn so far. */
    public List<Mark> lines() {
        return List.copyOf(lines);
    }

    /** Where a rectangle of the paper lies. */
    Area area(double x1, double y1, double x2, double y2) {
        return Area.between(paper.xMm(x1, y1), paper.yMm(x1, y1), paper.xMm(x2, y2), paper.yMm(x2, y2));
    }

    /**
     * Draws a line along the columns or the rows, cut off at the edge of what is shown.
     *
     * @param kind which line it is of those of the layer {@link edgewright.draw.marks.Layer#GRID}
     */
    public void line(MarkKind kind, double x1, double y1, double x2, double y2) {
        Area shown = layout.area();
        Area line = area(x1, y1, x2, y2);
        // A thousandth of a cell of play: the sums above need not end on the very edge.
        double play = layout.cellMm() / 1000;
        if (!shown.grown(play).touches(line)) {
            return;
        }
        double left = Math.max(line.xMm(), shown.xMm());
        double right = Math.min(line.rightMm(), shown.rightMm());
        double top = Math.max(line.yMm(), shown.yMm());
        double bottom = Math.min(line.bottomMm(), shown.bottomMm());
        if (right - left < play && bottom - top < play) {
            return;
        }
        PenPath path =
                right - left < play ? PenPath.line(left, top, left, bottom) : PenPath.line(left, top, right, top);
        lines.add(Mark.beside(kind, shapes(kind, path)));
    }

    private List<Shape> shapes(MarkKind kind, PenPath path) {
        return shapes(kind, path, layout.cellMm(), palette);
    }

    /** A line of the paper between two points, as it is drawn with cells of that size. */
    static List<Shape> shapes(MarkKind kind, PenPath path, double c, Palette palette) {
        return switch (kind) {
            case TENTH_LINE ->
                palette.tenth().equals(palette.ink())
                        ? List.of(solid(path, TENTH_CASING * c, palette.paper()), solid(path, TENTH * c, palette.ink()))
                        : List.of(solid(path, TENTH * c, palette.tenth()));
            // On paper-coloured casing, to be seen on a yarn of any colour.
            case REPEAT_LINE ->
                List.of(
                        solid(path, REPEAT_CASING * c, palette.paper()),
                        new Shape.Line(path, REPEAT * c, palette.accent(), Shape.Ends.CUT, repeatDashesMm(c, palette)));
            case OUTLINE -> List.of(solid(path, EDGE * c, palette.ink()));
            default -> List.of(solid(path, GRID * c, palette.grid()));
        };
    }

    /** Where it has no colour of its own the line of a repeat is told from the others by its dashes. */
    private static List<Double> repeatDashesMm(double c, Palette palette) {
        return palette.accent().equals(palette.ink()) ? List.of(0.5 * c, 0.25 * c) : List.of();
    }

    static Shape.Line solid(PenPath path, double widthMm, Colour colour) {
        return new Shape.Line(path, widthMm, colour, Shape.Ends.CUT, List.of());
    }
}
