package edgewright.booklet;

import edgewright.draw.marks.Mark;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.List;

/** Marks that are printed where they do not belong. */
public final class MovedMarks {
    private MovedMarks() {}

    /** The same mark, drawn so far to the right. */
    public static Mark toTheRight(Mark mark, double mm) {
        List<Shape> shapes =
                mark.shapes().stream().map(shape -> toTheRight(shape, mm)).toList();
        return new Mark(mark.kind(), mark.cell(), mark.place(), mark.yarn(), shapes);
    }

    private static Shape toTheRight(Shape shape, double mm) {
        if (shape instanceof Shape.Fill fill) {
            return new Shape.Fill(toTheRight(fill.path(), mm), fill.colour());
        }
        if (shape instanceof Shape.Line line) {
            return new Shape.Line(
                    toTheRight(line.path(), mm), line.widthMm(), line.colour(), line.ends(), line.dashMm());
        }
        Shape.Text text = (Shape.Text) shape;
        return new Shape.Text(
                text.text(),
                text.xMm() + mm,
                text.yMm(),
                text.sizeMm(),
                text.weight(),
                text.anchor(),
                text.quarterTurns(),
                text.colour());
    }

    private static PenPath toTheRight(PenPath path, double mm) {
        PenPath.Builder moved = new PenPath.Builder();
        path.trace(new PenPath.Pen() {
            @Override
            public void moveTo(double x, double y) {
                moved.moveTo(x + mm, y);
            }

            @Override
            public void lineTo(double x, double y) {
                moved.lineTo(x + mm, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                moved.curveTo(x1 + mm, y1, x2 + mm, y2, x + mm, y);
            }

            @Override
            public void close() {
                moved.close();
            }
        });
        return moved.build();
    }
}
