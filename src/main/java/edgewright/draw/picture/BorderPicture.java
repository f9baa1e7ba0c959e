package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;

import edgewright.chart.BorderGrid;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
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
import java.util.Optional;

/**
 * The whole border around a piece, in the layers that the style asks for; without labels or legend, which only a chart needs.
 * Always as it lies on the fabric, the top above; for a left-handed maker as in a mirror.
 */
final class BorderPicture {
    /** Paper around the border, in cells. */
    private static final double EDGE = 1;

    private final Chart chart;
    private final PictureStyle style;
    private final BorderGrid grid;
    private final double cellMm;
    private final int rounds;
    private final YarnColours yarns;
    private final List<Mark> fabric = new ArrayList<>();
    private final List<Mark> toDo = new ArrayList<>();

    BorderPicture(Chart chart, PerSide<Integer> repeats, PictureStyle style) {
        this.chart = chart;
        this.style = style;
        this.grid = new BorderGrid(chart.shape(), repeats);
        this.yarns = new YarnColours(chart, style);
        this.cellMm = style.cellMm();
        this.rounds = chart.rounds().size();
    }

    Drawing drawing() {
        for (int round = 0; round <= rounds; round++) {
            for (Side side : Side.values()) {
                int stitches = grid.shape().stitches(round, grid.repeats().get(side));
                for (int p = 1; p <= stitches; p++) {
                    stitch(side, new SidePlace(round, p));
                }
                corner(side, round);
            }
        }
        Area sheet = sheet();
        List<Mark> marks = new ArrayList<>();
        marks.add(plane(MarkKind.PAPER, sheet, style.palette().paper()));
        if (style.fabric()) {
            Area piece = cells(0, 0, grid.width(), grid.height());
            marks.add(plane(MarkKind.FABRIC_PIECE, piece, style.palette().base()));
            marks.addAll(fabric);
        }
        if (style.grid()) {
            marks.addAll(lines());
        }
        if (style.marks()) {
            marks.addAll(toDo);
        }
        return new Drawing(
                sheet.widthMm(),
                sheet.heightMm(),
                style.says().text("border-title", arg("title", chart.title())),
                style.says().text("border-description", arg("title", chart.title())),
                marks);
    }

    /** The border and the paper around it. */
    Area sheet() {
        return cells(-rounds - 1 - EDGE, -rounds - 1 - EDGE, across() + EDGE, down() + EDGE);
    }

    private void stitch(Side side, SidePlace stitch) {
        GridCell cell = grid.cellOf(side, stitch);
        Frame frame = frame(cell, side);
        Place place = grid.shape().placeOf(stitch, grid.repeats().get(side));
        if (place.round() == 0) {
            base(cell, frame);
            return;
        }
        FabricShapes shapes = new FabricShapes(frame, areaOf(cell), yarns);
        StitchShapes signs = new StitchShapes(frame, cellMm, style.inking());
        if (!chart.has(place)) {
            List<Shape> bare = shapes.bare();
            fabric.add(mark(MarkKind.FABRIC_MISSING, cell, Optional.of(place), 0, bare));
            toDo.add(mark(MarkKind.MISSING, cell, Optional.of(place), 0, signs.missing(style.palette())));
            return;
        }
        Stitch kind = chart.stitch(place);
        int shown = chart.shownRound(place);
        List<Shape> yarn = shapes.stitch(kind, shown, shown != place.round());
        fabric.add(mark(MarkKind.FABRIC_STITCH, cell, Optional.of(place), shown, yarn));
        List<Shape> sign = signs.of(kind, yarns.mark(place.round()), yarns.ground(shown), 2);
        toDo.add(mark(MarkKind.of(kind), cell, Optional.of(place), place.round(), sign));
    }

    private void corner(Side after, int round) {
        GridCell cell = grid.cornerCell(after, round);
        Frame frame = frame(cell, after);
        if (round == 0) {
            base(cell, frame);
            return;
        }
        FabricShapes shapes = new FabricShapes(frame, areaOf(cell), yarns);
        fabric.add(mark(MarkKind.FABRIC_CORNER, cell, Optional.empty(), round, shapes.corner(round)));
        boolean above = after == Side.TOP || after == Side.RIGHT;
        List<Shape> chains = StitchShapes.cornerChains(
                areaOf(cell), above, chart.corner().chains(), style.inking().on(yarns.ground(round)));
        toDo.add(mark(MarkKind.CORNER_CHAINS, cell, Optional.empty(), round, chains));
    }

    private void base(GridCell cell, Frame frame) {
        FabricShapes shapes = new FabricShapes(frame, areaOf(cell), yarns);
        fabric.add(mark(MarkKind.FABRIC_BASE, cell, Optional.empty(), 0, shapes.base()));
        List<Shape> dot = new StitchShapes(frame, cellMm, style.inking()).base(yarns.ground(0), style.palette());
        toDo.add(mark(MarkKind.BASE_STITCH, cell, Optional.empty(), 0, dot));
    }

    /** The lines between cells; they stop at the piece. */
    private List<Mark> lines() {
        List<Mark> lines = new ArrayList<>();
        for (int y = -rounds - 1; y <= down(); y++) {
            boolean beside = 0 < y && y < grid.height();
            addLine(lines, -rounds - 1, y, beside ? 0 : across(), y);
            if (beside) {
                addLine(lines, grid.width(), y, across(), y);
            }
        }
        for (int x = -rounds - 1; x <= across(); x++) {
            boolean beside = 0 < x && x < grid.width();
            addLine(lines, x, -rounds - 1, x, beside ? 0 : down());
            if (beside) {
                addLine(lines, x, grid.height(), x, down());
            }
        }
        return lines;
    }

    private void addLine(List<Mark> lines, int x1, int y1, int x2, int y2) {
        Area line = cells(x1, y1, x2, y2);
        PenPath path = PenPath.line(line.xMm(), line.yMm(), line.rightMm(), line.bottomMm());
        double width = CornerLines.GRID * cellMm;
        lines.add(Mark.beside(
                MarkKind.GRID_LINE,
                List.of(CornerLines.solid(path, width, style.palette().grid()))));
    }

    private Mark mark(MarkKind kind, GridCell cell, Optional<Place> place, int yarnOfRound, List<Shape> shapes) {
        Optional<String> yarn = yarnOfRound == 0
                ? Optional.empty()
                : Optional.of(chart.round(yarnOfRound).yarn());
        return new Mark(kind, Optional.of(cell), place, yarn, shapes);
    }

    private static Mark plane(MarkKind kind, Area area, Colour colour) {
        return Mark.beside(kind, List.of(new Shape.Fill(PenPath.rectangle(area), colour)));
    }

    /** The column after the outermost round on the right. */
    private int across() {
        return grid.width() + rounds + 1;
    }

    /** The row after the outermost round below. */
    private int down() {
        return grid.height() + rounds + 1;
    }

    private Area areaOf(GridCell cell) {
        return cells(cell.x(), cell.y(), cell.x() + 1, cell.y() + 1);
    }

    private Area cells(double x1, double y1, double x2, double y2) {
        if (style.hand() == HookHand.LEFT) {
            double mirror = grid.width();
            return onPaper(mirror - x1, y1, mirror - x2, y2);
        }
        return onPaper(x1, y1, x2, y2);
    }

    private Area onPaper(double x1, double y1, double x2, double y2) {
        double origin = rounds + 1 + EDGE;
        return Area.between(
                (origin + x1) * cellMm, (origin + y1) * cellMm, (origin + x2) * cellMm, (origin + y2) * cellMm);
    }

    private Frame frame(GridCell cell, Side side) {
        Frame frame =
                Frame.of(side.ordinal(), areaOf(cell).middleXMm(), areaOf(cell).middleYMm(), cellMm);
        return style.hand() == HookHand.LEFT ? frame.mirrored() : frame;
    }
}
