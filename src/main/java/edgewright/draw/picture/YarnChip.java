package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Hatch;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A small square that stands for a yarn beside its name. */
public final class YarnChip {
    private static final double EDGE = 0.06;

    private YarnChip() {}

    /**
     * A square hatched as the areas of a yarn are hatched in black and white, where no marks lie on them; blank for a yarn that the chart does not work
     * with.
     *
     * @param yarn the id of the yarn
     */
    public static Drawing hatched(Chart chart, String yarn, double sideMm) {
        Area square = new Area(0, 0, sideMm, sideMm);
        List<Shape> shapes =
                new ArrayList<>(Hatch.of(chart).getOrDefault(yarn, Hatch.BLANK).in(square));
        double edge = EDGE * sideMm;
        shapes.add(new Shape.Line(
                PenPath.rectangle(square.grown(-edge / 2)), edge, Palette.BLACK.ink(), Shape.Ends.CUT, List.of()));
        Mark mark = new Mark(MarkKind.LEGEND, Optional.empty(), Optional.empty(), Optional.of(yarn), shapes);
        return new Drawing(sideMm, sideMm, yarn, yarn, List.of(mark));
    }
}
