package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;

import edgewright.chart.BorderGrid;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/**
 * The whole border around a piece, in the layers that the style asks for; without labels or legend, which only a chart needs.
 * Always as it lies on the fabric, the top above; for a left-handed maker as in a mirror.
 */
public final class BorderPicture implements ChartPicture.InParts {
    /** Paper around the border, in cells. */
    private static final double EDGE = 1;

    private final Chart chart;
    private final PictureStyle style;
    private final BorderLayout layout;
    private final PictureMarks marks;

    private BorderPicture(Chart chart, PictureStyle style, BorderLayout layout) {
        this.chart = chart;
        this.style = style.withLabels(false).withLegend(false);
        this.layout = layout;
        CellMarks cells = new CellMarks(chart, this.style, Emphasis.NONE, layout);
        marks = new PictureMarks(this.style, layout, cells, furniture(cells));
    }

    /**
     * The border of a chart.
     *
     * @param repeats how often the repeat is worked on each side; opposite sides equal
     */
    public static BorderPicture of(Chart chart, PerSide<Integer> repeats, PictureStyle style) {
        return new BorderPicture(chart, style, layoutOf(chart, repeats, style));
    }

    private static BorderLayout layoutOf(Chart chart, PerSide<Integer> repeats, PictureStyle style) {
        double edgeMm = EDGE * style.cellMm();
        return new BorderLayout(
                new BorderGrid(chart.border(), repeats),
                chart.rounds().size(),
                new CellLayout.Placement(
                        style.cellMm(), Rotation.NONE, style.hand(), Optional.empty(), edgeMm, edgeMm));
    }

    Drawing drawing() {
        return new Drawing(
                sheet().widthMm(),
                sheet().heightMm(),
                style.says().text("border-title", arg("title", chart.title())),
                style.says().text("border-description", arg("title", chart.title())),
                marksIn(sheet()));
    }

    /** The border and the paper around it. */
    private Area sheet() {
        return sheetOf(layout);
    }

    private static Area sheetOf(CellLayout layout) {
        return layout.area().grown(EDGE * layout.cellMm());
    }

    /** The sheet of the border of a chart. */
    static Area sheetOf(Chart chart, PerSide<Integer> repeats, PictureStyle style) {
        return sheetOf(layoutOf(chart, repeats, style));
    }

    @Override
    public CellLayout layout() {
        return layout;
    }

    @Override
    public double widthMm() {
        return sheet().widthMm();
    }

    @Override
    public double heightMm() {
        return sheet().heightMm();
    }

    @Override
    public List<Mark> marksIn(Area area) {
        return marks.in(area);
    }

    @Override
    public List<Area> areasOf(Place place) {
        return marks.areasOf(place);
    }

    /** Where the cells of a whole border lie: all sides and all corners, around the piece. */
    static final class BorderLayout extends CellLayout {
        /** @param rounds the outermost round */
        BorderLayout(BorderGrid grid, int rounds, Placement placement) {
            super(
                    new Part(grid, rounds, PerSide.all(EnumSet.allOf(Section.class)), EnumSet.allOf(Side.class)),
                    placement);
        }
    }

    private List<Mark> furniture(CellMarks cells) {
        SquaredPaper paper = new SquaredPaper(layout, style.palette());
        List<Mark> furniture = new ArrayList<>();
        furniture.add(plane(MarkKind.PAPER, sheet(), style.palette().paper()));
        if (style.fabric()) {
            cells.under(List.of(layout.area().grown(-CellMarks.LOOPS * layout.cellMm())))
                    .ifPresent(furniture::add);
            Area piece = paper.area(0, 0, layout.grid().width(), layout.grid().height());
            furniture.add(plane(MarkKind.FABRIC_PIECE, piece, style.palette().base()));
        }
        if (style.grid()) {
            addLines(paper);
            furniture.addAll(paper.lines());
        }
        return furniture;
    }

    /** The lines between cells; they stop at the piece. */
    private void addLines(SquaredPaper paper) {
        int width = layout.grid().width();
        int height = layout.grid().height();
        int first = -layout.rounds() - 1;
        int endX = width + layout.rounds() + 1;
        int endY = height + layout.rounds() + 1;
        for (int y = first; y <= endY; y++) {
            boolean beside = 0 < y && y < height;
            paper.line(MarkKind.GRID_LINE, first, y, beside ? 0 : endX, y);
            if (beside) {
                paper.line(MarkKind.GRID_LINE, width, y, endX, y);
            }
        }
        for (int x = first; x <= endX; x++) {
            boolean beside = 0 < x && x < width;
            paper.line(MarkKind.GRID_LINE, x, first, x, beside ? 0 : endY);
            if (beside) {
                paper.line(MarkKind.GRID_LINE, x, height, x, endY);
            }
        }
    }

    private static Mark plane(MarkKind kind, Area area, Colour colour) {
        return Mark.beside(kind, List.of(new Shape.Fill(PenPath.rectangle(area), colour)));
    }
}
