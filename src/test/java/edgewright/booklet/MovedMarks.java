package edgewright.booklet;

import edgewright.draw.marks.Mark;
import edgewright.draw.paint.Shape;
import java.util.List;

/** Marks that are printed where they do not belong. */
public final class MovedMarks {
    private MovedMarks() {}

    /** The same mark, drawn so far to the right. */
    public static Mark toTheRight(Mark mark, double mm) {
        List<Shape> shapes =
                mark.shapes().stream().map(shape -> shape.moved(mm, 0)).toList();
        return new Mark(mark.kind(), mark.cell(), mark.place(), mark.yarn(), shapes);
    }
}
