package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One corner of a border as a picture: an arm on each side of the diagonal, on each the repeat and the stitches at the corner.
 *
 * <p>Immutable. Marks are made when they are asked for, for the whole corner or for a damaged part, so a large chart costs no
 * more to repaint than what has changed in it.
 */
public final class CornerPicture implements ChartPicture.InParts {
    private final Chart chart;
    private final PictureStyle style;
    private final Emphasis emphasis;
    private final CornerSheet sheet;
    private final PictureMarks marks;

    private CornerPicture(
            Chart chart, PictureStyle style, Emphasis emphasis, Optional<CellRange> shown, boolean ringed) {
        this.chart = chart;
        this.style = style;
        this.emphasis = emphasis;
        this.sheet = CornerSheet.of(chart, style, emphasis, shown, ringed);
        List<Mark> furniture = new ArrayList<>();
        furniture.add(Mark.beside(
                MarkKind.PAPER,
                List.of(new Shape.Fill(
                        PenPath.rectangle(new Area(0, 0, widthMm(), heightMm())),
                        style.palette().paper()))));
        CellMarks cells = new CellMarks(chart, style, emphasis, layout());
        if (style.fabric()) {
            cells.under(arms()).ifPresent(furniture::add);
        }
        if (style.grid()) {
            furniture.addAll(new CornerLines(layout(), style.palette()).marks());
        }
        if (style.labels()) {
            furniture.addAll(new CornerLabels(chart, style, emphasis, sheet).marks());
        }
        if (style.legend()) {
            furniture.addAll(sheet.legendMarks());
        }
        this.marks = new PictureMarks(style, layout(), cells, furniture);
    }

    /** The corner of a chart, whole. A ragged chart is drawn as far as it goes, and what it lacks is marked. */
    public static CornerPicture of(Chart chart, PictureStyle style, Emphasis emphasis) {
        return new CornerPicture(
                chart, style, emphasis, Optional.empty(), !emphasis.flags().isEmpty());
    }

    /** The same with room for rings, even where there are none yet: so nothing moves as findings come and go. */
    public static CornerPicture onScreen(Chart chart, PictureStyle style, Emphasis emphasis) {
        return new CornerPicture(chart, style, emphasis, Optional.empty(), true);
    }

    /**
     * A part of this corner on a sheet of its own, with the numbers of its rounds repeated at its edges; for charts that are
     * larger than a page. A long stitch that lands beyond the edge is cut off there, so parts that are to be read together overlap
     * by two cells.
     *
     * @param shown among the columns and rows of {@link CornerLayout#columns} and {@link CornerLayout#rows}
     */
    public CornerPicture tile(CellRange shown) {
        return new CornerPicture(
                chart,
                style.withLegend(false),
                emphasis,
                Optional.of(shown),
                !emphasis.flags().isEmpty());
    }

    /** The areas of the two arms that are shown, each with the corner, without what may be free beside the last round's loops. */
    private List<Area> arms() {
        CornerLayout layout = layout();
        Area shown = layout.area().grown(-CellMarks.LOOPS * layout.cellMm());
        Area corner = layout.areaOf(layout.cornerCell(0)).with(layout.areaOf(layout.cornerCell(layout.rounds())));
        double left = Math.max(shown.xMm(), corner.xMm());
        double right = Math.min(shown.rightMm(), corner.rightMm());
        double top = Math.max(shown.yMm(), corner.yMm());
        double bottom = Math.min(shown.bottomMm(), corner.bottomMm());
        List<Area> arms = new ArrayList<>();
        if (left < right) {
            arms.add(Area.between(left, shown.yMm(), right, shown.bottomMm()));
        }
        if (top < bottom) {
            arms.add(Area.between(shown.xMm(), top, shown.rightMm(), bottom));
        }
        return arms;
    }

    @Override
    public CornerLayout layout() {
        return sheet.layout();
    }

    @Override
    public double widthMm() {
        return sheet.widthMm();
    }

    @Override
    public double heightMm() {
        return sheet.heightMm();
    }

    /** The whole picture. */
    public Drawing drawing() {
        String repeats = style.says().text("corner-repeats", count("repeats", layout().repeats()));
        return new Drawing(
                widthMm(),
                heightMm(),
                style.says().text("corner-title", arg("title", chart.title())),
                style.says()
                        .text(
                                "corner-description",
                                arg("title", chart.title()),
                                count("rounds", chart.rounds().size()),
                                arg("shown", repeats),
                                count("stitches", layout().shape(Arm.INCOMING).w())),
                marksIn(new Area(0, 0, widthMm(), heightMm())));
    }

    @Override
    public List<Mark> marksIn(Area area) {
        return marks.in(area);
    }

    @Override
    public List<Area> areasOf(Place place) {
        return marks.areasOf(place);
    }
}
