package edgewright.draw.picture;

import edgewright.chart.Colour;
import edgewright.chart.Stitch;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;

/** The sign of a stitch by itself, in one colour, for buttons and the like: what charts show above the piece, but bolder. */
public final class StitchSign {
    private StitchSign() {}

    /**
     * A sign in the middle of a small sheet.
     *
     * @param widthMm the width of the sheet
     * @param heightMm the height of the sheet
     * @param cellMm how large the cell would be that has the sign in a chart; the sign is smaller if the sheet is too small
     * @param lineMm how wide its lines are; as much is free around it
     */
    public static Drawing of(Stitch stitch, double widthMm, double heightMm, double cellMm, double lineMm, Colour ink) {
        Area unit = StitchShapes.lines(stitch).through(Frame.of(0, 0, 0, 1)).bounds();
        double scale = Math.min(
                cellMm, Math.min((widthMm - 2 * lineMm) / unit.widthMm(), (heightMm - 2 * lineMm) / unit.heightMm()));
        Frame frame =
                Frame.of(0, widthMm / 2 - unit.middleXMm() * scale, heightMm / 2 - unit.middleYMm() * scale, scale);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Line(StitchShapes.lines(stitch).through(frame), lineMm, ink));
        StitchShapes.foot(stitch)
                .ifPresent(foot -> shapes.add(
                        new Shape.Fill(PenPath.circle(frame.xMm(0, foot), frame.yMm(0, foot), lineMm), ink)));
        String name = String.valueOf(stitch.letter());
        return new Drawing(widthMm, heightMm, name, name, List.of(Mark.beside(MarkKind.of(stitch), shapes)));
    }
}
