package edgewright.draw.picture;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.draw.grid.Direction;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.YarnSign;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The marks of single cells, in every picture of a chart: what shows, what to do, and what is to be looked at. */
public final class CellMarks {
    /** How far the loops of the last round may lie within their cells, in cells. */
    public static final double LOOPS = 0.3;

    /** How wide the line between two areas is, in cells: under marks, and where there are none. */
    static final double AREA_EDGE = 0.1;

    private static final double TONE_EDGE = 0.15;

    private final Chart chart;
    private final PictureStyle style;
    private final CellLayout layout;
    private final YarnColours yarns;
    private final FabricShapes fabric;
    private final Map<Place, List<Emphasis.Flag>> flagged;
    private final boolean lettered;

    public CellMarks(Chart chart, PictureStyle style, Emphasis emphasis, CellLayout layout) {
        this.chart = chart;
        this.style = style;
        this.layout = layout;
        this.yarns = new YarnColours(chart, style);
        this.fabric = new FabricShapes(yarns);
        flagged = emphasis.byStitch();
        lettered = YarnSign.hasLetters(chart);
    }

    /** Whether any stitch is to be looked at. */
    boolean hasFlags() {
        return !flagged.isEmpty();
    }

    /** What lies under worked fabric; nothing under any other. */
    public Optional<Mark> under(List<Area> areas) {
        return fabric.under(areas);
    }

    /** What shows in a cell. A long stitch is drawn over the cells that it covers too, so cells must be drawn from the inside out. */
    Mark fabric(DrawnCell drawn) {
        GridCell cell = drawn.cell();
        FabricShapes.Ground ground = new FabricShapes.Ground(
                cell,
                layout.frameOf(cell, drawn.side()),
                layout.areaOf(cell),
                layout.columnOf(cell),
                layout.rowOf(cell));
        int round = drawn.round();
        if (round == 0) {
            List<Shape> base = drawn instanceof DrawnCell.OfStitch stitch
                    ? fabric.base(ground, above(stitch.place()))
                    : fabric.corner(ground, 0, chart.corner().chains(), false);
            return mark(MarkKind.FABRIC_BASE, cell, Optional.empty(), 0, base);
        }
        if (!(drawn instanceof DrawnCell.OfStitch stitch)) {
            List<Shape> chains = fabric.corner(
                    ground,
                    round,
                    chart.corner().chains(),
                    round == chart.rounds().size());
            return mark(MarkKind.FABRIC_CORNER, cell, Optional.empty(), round, chains);
        }
        Place place = stitch.place();
        if (!chart.has(place)) {
            return mark(MarkKind.FABRIC_MISSING, cell, Optional.of(place), 0, fabric.bare(ground));
        }
        int shown = chart.shownRound(place);
        return mark(
                MarkKind.FABRIC_STITCH,
                cell,
                Optional.of(place),
                shown,
                fabric.stitch(ground, chart.stitch(place), shown, above(place)));
    }

    /** The stitch above a place, if the chart has it. */
    private Optional<Stitch> above(Place place) {
        Place above =
                new Place(place.round() + 1, place.section(), place.section().placeAbove(place.place(), 1));
        return chart.has(above) ? Optional.of(chart.stitch(above)) : Optional.empty();
    }

    /** What to do at a cell; empty for a cell that is left without a mark. */
    Optional<Mark> toDo(DrawnCell drawn) {
        return drawn instanceof DrawnCell.OfStitch stitch && isLeftBare(stitch.place())
                ? Optional.empty()
                : Optional.of(marked(drawn));
    }

    /** Where each long stitch is one sign in its own square, the back-loop stitch that it covers is left without one. */
    private boolean isLeftBare(Place place) {
        return style.markStyle() == MarkStyle.SQUARES
                && place.round() > 0
                && chart.has(place)
                && chart.stitch(place) == Stitch.BACK_LOOP
                && chart.shownRound(place) != place.round();
    }

    private Mark marked(DrawnCell drawn) {
        GridCell cell = drawn.cell();
        StitchShapes shapes = new StitchShapes(
                layout.frameOf(cell, drawn.side()), layout.cellMm(), style.inking(), style.markStyle());
        int round = drawn.round();
        if (round == 0) {
            return mark(MarkKind.BASE_STITCH, cell, Optional.empty(), 0, shapes.base(yarns.ground(0), style.palette()));
        }
        if (!(drawn instanceof DrawnCell.OfStitch stitch)) {
            List<Shape> chains = StitchShapes.cornerChains(
                    layout.areaOf(cell),
                    layout.isCornerAbove(drawn.side()),
                    chart.corner().chains(),
                    style.inking().on(yarns.ground(round)));
            return mark(MarkKind.CORNER_CHAINS, cell, Optional.empty(), round, chains);
        }
        Place place = stitch.place();
        if (!chart.has(place)) {
            return mark(MarkKind.MISSING, cell, Optional.of(place), 0, shapes.missing(style.palette()));
        }
        Stitch kind = chart.stitch(place);
        List<Shape> sign =
                shapes.of(kind, yarns.mark(round), yarns.ground(chart.shownRound(place)), shownBelow(drawn, kind));
        return mark(MarkKind.of(kind), cell, Optional.of(place), round, sign);
    }

    /**
     * Lines on the edges of a cell where in one ink an area of a yarn ends. Of two cells it is the left one or the upper one that
     * has the line between them.
     */
    Optional<Mark> areaEdges(DrawnCell drawn) {
        if (!yarns.isToned() && !(yarns.isInOneInk() && lettered)) {
            return Optional.empty();
        }
        int round = shownRound(drawn);
        Area area = layout.areaOf(drawn.cell());
        List<Shape> edges = new ArrayList<>();
        for (Direction heading : Direction.values()) {
            Optional<DrawnCell> next = next(drawn.cell(), heading);
            boolean ends = next.isPresent()
                    ? heading.columns() + heading.rows() > 0 && isEdge(round, shownRound(next.get()))
                    : yarns.isToned() && round > 0 && !yarns.isSolid(round);
            if (ends) {
                edges.add(edge(area, heading));
            }
        }
        return edges.isEmpty()
                ? Optional.empty()
                : Optional.of(mark(MarkKind.AREA_LINE, drawn.cell(), Optional.empty(), 0, edges));
    }

    private Optional<DrawnCell> next(GridCell cell, Direction heading) {
        return layout.contentOf(
                layout.cellAtColumn(layout.columnOf(cell) + heading.columns(), layout.rowOf(cell) + heading.rows()));
    }

    /** The round whose yarn shows in a cell; 0 where no yarn of the chart does. */
    private int shownRound(DrawnCell drawn) {
        if (!(drawn instanceof DrawnCell.OfStitch stitch) || drawn.round() == 0) {
            return drawn.round();
        }
        return chart.has(stitch.place()) ? chart.shownRound(stitch.place()) : 0;
    }

    /** Black areas need no line around them. */
    private boolean isEdge(int round, int other) {
        boolean paper = round == 0 || other == 0;
        boolean same = round == other
                || (!paper
                        && chart.round(round).yarn().equals(chart.round(other).yarn()));
        return !same && !yarns.isSolid(round) && !yarns.isSolid(other);
    }

    private Shape edge(Area area, Direction heading) {
        double x = heading.columns() > 0 ? area.rightMm() : area.xMm();
        double y = heading.rows() > 0 ? area.bottomMm() : area.yMm();
        PenPath path = heading.columns() == 0
                ? PenPath.line(area.xMm(), y, area.rightMm(), y)
                : PenPath.line(x, area.yMm(), x, area.bottomMm());
        return yarns.isToned()
                ? new Shape.Line(
                        path, TONE_EDGE * layout.cellMm(), style.palette().ink())
                : SquaredPaper.solid(
                        path, AREA_EDGE * layout.cellMm(), style.palette().ink());
    }

    /** The number of a charted round in the cell of its corner chains; empty for any other cell. */
    Optional<Mark> roundNumber(DrawnCell drawn) {
        int round = drawn.round();
        if (!(drawn instanceof DrawnCell.OfCorner) || round == 0) {
            return Optional.empty();
        }
        Area area = layout.areaOf(drawn.cell());
        String number = Integer.toString(round);
        double c = layout.cellMm();
        double size = CornerSheet.fitted(number, Shape.Weight.REGULAR, 0.41 * c, 0.8 * c);
        Shape text = new Shape.Text(
                number,
                area.middleXMm(),
                layout.isCornerAbove(drawn.side())
                        ? area.bottomMm() - 0.12 * c
                        : area.yMm() + 0.12 * c + Lettering.CAPITAL * size,
                size,
                Shape.Weight.REGULAR,
                Shape.Anchor.MIDDLE,
                0,
                style.inking().on(yarns.ground(round)));
        return Optional.of(mark(MarkKind.ROUND_NUMBER, drawn.cell(), Optional.empty(), 0, List.of(text)));
    }

    /** The ring round a cell whose stitch is to be looked at. */
    Optional<Mark> flags(DrawnCell drawn) {
        if (!(drawn instanceof DrawnCell.OfStitch stitch) || !flagged.containsKey(stitch.place())) {
            return Optional.empty();
        }
        List<Shape> ring =
                FindingShapes.ring(layout.areaOf(stitch.cell()), flagged.get(stitch.place()), style.palette());
        return Optional.of(mark(MarkKind.FLAG, stitch.cell(), Optional.of(stitch.place()), 0, ring));
    }

    /** @param yarnOfRound in the yarn of which round it is drawn; 0 for none of the chart */
    private Mark mark(MarkKind kind, GridCell cell, Optional<Place> place, int yarnOfRound, List<Shape> shapes) {
        Optional<String> yarn = yarnOfRound == 0
                ? Optional.empty()
                : Optional.of(chart.round(yarnOfRound).yarn());
        return new Mark(kind, Optional.of(cell), place, yarn, shapes);
    }

    /** How many of the cells below this one that a stitch reaches over, towards the piece, lie in what is shown. */
    private int shownBelow(DrawnCell drawn, Stitch stitch) {
        int below = 0;
        for (int step = 1; step <= stitch.roundsDown(); step++) {
            GridCell cell = layout.grid().below(drawn.side(), drawn.cell(), step);
            below += layout.isShown(cell) ? 1 : 0;
        }
        return below;
    }
}
