package edgewright.draw;

import edgewright.chart.BorderGrid;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.GridCell;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The whole border around a piece: the fabric layer, and the marks if the style asks for them. */
final class BorderPicture {
    private static final double EDGE = 1;

    private final Chart chart;
    private final PictureStyle style;
    private final BorderGrid grid;
    private final double c;
    private final int rounds;

    BorderPicture(Chart chart, PerSide repeats, PictureStyle style) {
        this.chart = chart;
        this.style = style;
        this.grid = new BorderGrid(chart.shape(), repeats);
        this.c = style.cellMm();
        this.rounds = chart.rounds().size();
    }

    Drawing drawing() {
        List<Mark> marks = new ArrayList<>();
        double width = (grid.width() + 2 * (rounds + 1 + EDGE)) * c;
        double height = (grid.height() + 2 * (rounds + 1 + EDGE)) * c;
        Palette palette = style.palette();
        marks.add(Mark.beside(
                MarkKind.PAPER,
                List.of(new Shape.Fill(PenPath.rectangle(new Area(0, 0, width, height)), palette.paper()))));
        Area piece = new Area(
                areaOf(new GridCell(0, 0)).xMm(),
                areaOf(new GridCell(0, 0)).yMm(),
                grid.width() * c,
                grid.height() * c);
        marks.add(
                Mark.beside(MarkKind.FABRIC_PIECE, List.of(new Shape.Fill(PenPath.rectangle(piece), palette.base()))));
        List<Mark> toDo = new ArrayList<>();
        for (int round = 0; round <= rounds; round++) {
            for (Side side : Side.values()) {
                int stitches = grid.shape().stitches(round, grid.repeats().of(side));
                for (int p = 1; p <= stitches; p++) {
                    stitch(side, new SidePlace(round, p), marks, toDo);
                }
                corner(side, round, marks, toDo);
            }
        }
        if (style.marks()) {
            marks.addAll(toDo);
        }
        return new Drawing(
                width,
                height,
                Labels.of("border.title", chart.title()),
                Labels.of("border.description", chart.title()),
                marks);
    }

    private void stitch(Side side, SidePlace stitch, List<Mark> fabric, List<Mark> toDo) {
        GridCell cell = grid.cellOf(side, stitch);
        Frame frame = frame(cell, side);
        FabricShapes shapes = new FabricShapes(frame, areaOf(cell), style.look());
        Place place = grid.shape().placeOf(stitch, grid.repeats().of(side));
        if (place.round() == 0 || !chart.has(place)) {
            MarkKind kind = place.round() == 0 ? MarkKind.FABRIC_BASE : MarkKind.FABRIC_MISSING;
            Colour colour = place.round() == 0
                    ? style.palette().base()
                    : style.palette().paper();
            fabric.add(new Mark(kind, Optional.of(cell), Optional.empty(), Optional.empty(), shapes.flat(colour)));
            return;
        }
        Stitch kind = chart.stitch(place);
        int shown = chart.shownRound(place);
        Colour colour = chart.yarnOf(shown).colour();
        fabric.add(new Mark(
                MarkKind.FABRIC_STITCH,
                Optional.of(cell),
                Optional.of(place),
                Optional.of(chart.round(shown).yarn()),
                shapes.stitch(kind, colour, shown != place.round())));
        toDo.add(new Mark(
                MarkKind.of(kind),
                Optional.of(cell),
                Optional.of(place),
                Optional.of(chart.round(place.round()).yarn()),
                new StitchShapes(frame, c).of(kind, chart.yarnOf(place.round()).colour(), colour)));
    }

    private void corner(Side after, int round, List<Mark> fabric, List<Mark> toDo) {
        GridCell cell = grid.cornerCell(after, round);
        Frame frame = frame(cell, after);
        FabricShapes shapes = new FabricShapes(frame, areaOf(cell), style.look());
        if (round == 0) {
            fabric.add(new Mark(
                    MarkKind.FABRIC_BASE,
                    Optional.of(cell),
                    Optional.empty(),
                    Optional.empty(),
                    shapes.flat(style.palette().base())));
            return;
        }
        Colour colour = chart.yarnOf(round).colour();
        Optional<String> yarn = Optional.of(chart.round(round).yarn());
        fabric.add(new Mark(MarkKind.FABRIC_CORNER, Optional.of(cell), Optional.empty(), yarn, shapes.corner(colour)));
        toDo.add(new Mark(
                MarkKind.CORNER_CHAINS,
                Optional.of(cell),
                Optional.empty(),
                yarn,
                StitchShapes.cornerChains(
                        areaOf(cell),
                        after == Side.TOP || after == Side.RIGHT,
                        chart.corner().chains(),
                        colour)));
    }

    private Area areaOf(GridCell cell) {
        double origin = (rounds + 1 + EDGE) * c;
        return new Area(origin + cell.x() * c, origin + cell.y() * c, c, c);
    }

    private Frame frame(GridCell cell, Side side) {
        Area area = areaOf(cell);
        return switch (side) {
            case TOP -> new Frame(area.middleXMm(), area.middleYMm(), -c, 0, 0, -c);
            case LEFT -> new Frame(area.middleXMm(), area.middleYMm(), 0, c, -c, 0);
            case BOTTOM -> new Frame(area.middleXMm(), area.middleYMm(), c, 0, 0, c);
            case RIGHT -> new Frame(area.middleXMm(), area.middleYMm(), 0, -c, c, 0);
        };
    }
}
