package edgewright.draw.side;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.draw.grid.CellRange;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.CellMarks;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.PictureMarks;
import edgewright.draw.picture.PictureStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One side of a border as it is worked, on a level strip: corner, repeat, corner. Each row is a round, read in the direction of
 * work, with the piece below. The repeat is drawn once, for all its workings. How the style rotates pictures and how often it
 * repeats is of no account.
 *
 * <p>Immutable. Marks are made when they are asked for, for the whole side or for a part of it.
 */
public final class SidePicture implements ChartPicture.InParts {
    private final Chart chart;
    private final Side side;
    private final PictureStyle style;
    private final Emphasis emphasis;
    private final SideSheet sheet;
    private final PictureMarks marks;

    private SidePicture(Chart chart, Side side, PictureStyle style, Emphasis emphasis, Optional<CellRange> shown) {
        this.chart = chart;
        this.side = side;
        this.style = style;
        this.emphasis = emphasis;
        this.sheet = new SideSheet(chart, side, style, emphasis, shown);
        List<Mark> furniture = new ArrayList<>();
        furniture.add(Mark.beside(
                MarkKind.PAPER,
                List.of(new Shape.Fill(
                        PenPath.rectangle(new Area(0, 0, widthMm(), heightMm())),
                        style.palette().paper()))));
        CellMarks cells = new CellMarks(chart, style, emphasis, layout());
        if (style.fabric()) {
            cells.under(rows()).ifPresent(furniture::add);
        }
        if (style.grid()) {
            furniture.addAll(new SideLines(layout(), style.palette()).marks());
        }
        if (style.labels()) {
            furniture.addAll(new SideLabels(chart, style, emphasis, sheet).marks());
        }
        furniture.addAll(sheet.legendMarks());
        this.marks = new PictureMarks(style, layout(), cells, furniture);
    }

    /** Each shown row of cells; without what may be free beside the last round's loops. */
    private List<Area> rows() {
        SideLayout layout = layout();
        Area shown = layout.area();
        double loops = CellMarks.LOOPS * layout.cellMm();
        List<Area> rows = new ArrayList<>();
        for (int round = 0; round <= layout.rounds(); round++) {
            Area row = layout.areaOf(layout.cell(round, 0))
                    .with(layout.areaOf(layout.cell(round, layout.stitches(round) + 1)));
            double left = Math.max(shown.xMm(), row.xMm());
            double right = Math.min(shown.rightMm(), row.rightMm());
            double top = row.yMm() + (round == layout.rounds() ? loops : 0);
            if (left < right && shown.yMm() < row.middleYMm() && row.middleYMm() < shown.bottomMm()) {
                rows.add(Area.between(left, top, right, row.bottomMm()));
            }
        }
        return rows;
    }

    /** A side of a chart, whole. A ragged chart is drawn as far as it goes, and what it lacks is marked. */
    public static SidePicture of(Chart chart, Side side, PictureStyle style, Emphasis emphasis) {
        return new SidePicture(chart, side, style, emphasis, Optional.empty());
    }

    /** The sides of a chart that differ, each the first of those like it. */
    public static List<Side> differing(Chart chart) {
        return Side.where(side -> Side.where(other -> chart.shape(other).equals(chart.shape(side)))
                .get(0)
                .equals(side));
    }

    /** About how many stitches the sides that differ have in all rounds, at least as many as there are. */
    public static long stitches(Chart chart) {
        int rounds = chart.rounds().size();
        return differing(chart).stream()
                .mapToLong(side -> (long) rounds * chart.shape(side).stitches(rounds, 1))
                .sum();
    }

    /**
     * A part of this side on a sheet of its own, with the numbers of its rounds at its edges.
     *
     * @param shown among the columns and rows of {@link SideLayout#columns} and {@link SideLayout#rows}
     */
    public SidePicture tile(CellRange shown) {
        return new SidePicture(chart, side, style.withLegend(false), emphasis, Optional.of(shown));
    }

    @Override
    public SideLayout layout() {
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
        return new Drawing(
                widthMm(),
                heightMm(),
                style.says().text("side-title", arg("title", chart.title())),
                style.says()
                        .text(
                                "side-description",
                                arg("title", chart.title()),
                                count("rounds", chart.rounds().size()),
                                count("stitches", layout().shape().w())),
                marksIn(new Area(0, 0, widthMm(), heightMm())));
    }

    @Override
    public List<Mark> marksIn(Area area) {
        // The number of a round stands at both ends of its row; in the corner beside it it would stand twice.
        return marks.in(area).stream()
                .filter(mark ->
                        mark.kind() != MarkKind.ROUND_NUMBER || mark.cell().isEmpty())
                .toList();
    }

    @Override
    public List<Area> areasOf(Place place) {
        return marks.areasOf(place);
    }
}
