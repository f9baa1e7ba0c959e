package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Stitch;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One corner of a border as a picture: a limb on each side of the diagonal, on each the repeat and the stitches at the corner.
 *
 * <p>Immutable. Marks are made when they are asked for, for the whole corner or for a damaged part, so a large chart costs no
 * more to repaint than what has changed in it.
 */
public final class CornerPicture {
    /** How many cells a mark can reach beyond its own: a long stitch lands two rounds down, a ring stands out a little. */
    private static final int REACH = 3;

    private final Chart chart;
    private final PictureStyle style;
    private final Emphasis emphasis;
    private final CornerSheet sheet;
    private final CornerLayout layout;
    private final YarnColours yarns;
    private final Map<Place, List<Emphasis.Flag>> flagged;
    private final List<Mark> furniture;

    private CornerPicture(Chart chart, PictureStyle style, Emphasis emphasis, Optional<CellRange> shown) {
        this.chart = chart;
        this.style = style;
        this.emphasis = emphasis;
        this.sheet = CornerSheet.of(chart, style, emphasis, shown);
        this.layout = sheet.layout();
        this.yarns = new YarnColours(chart, style);
        this.flagged = new HashMap<>();
        for (Emphasis.Flag flag : emphasis.flags()) {
            flag.stitch()
                    .ifPresent(place -> flagged.computeIfAbsent(place, p -> new ArrayList<>())
                            .add(flag));
        }
        this.furniture = new ArrayList<>();
        if (style.grid()) {
            furniture.addAll(new CornerLines(layout, style.palette()).marks());
        }
        if (style.labels()) {
            furniture.addAll(new CornerLabels(chart, style, emphasis, sheet).marks());
        }
        if (style.legend()) {
            furniture.addAll(sheet.legendMarks());
        }
    }

    /** The corner of a chart, whole. A ragged chart is drawn as far as it goes, and what it lacks is marked. */
    public static CornerPicture of(Chart chart, PictureStyle style, Emphasis emphasis) {
        return new CornerPicture(chart, style, emphasis, Optional.empty());
    }

    /**
     * A part of this corner on a sheet of its own, with the numbers of its rounds repeated at its edges; for charts that are
     * larger than a page. A long stitch that lands beyond the edge is cut off there, so parts that are to be read together overlap
     * by two cells.
     *
     * @param shown among the columns and rows of {@link CornerLayout#columns} and {@link CornerLayout#rows}
     */
    public CornerPicture tile(CellRange shown) {
        return new CornerPicture(chart, style.withLegend(false), emphasis, Optional.of(shown));
    }

    /** Where its cells lie. */
    public CornerLayout layout() {
        return layout;
    }

    /** The width of the sheet. */
    public double widthMm() {
        return sheet.widthMm();
    }

    /** The height of the sheet. */
    public double heightMm() {
        return sheet.heightMm();
    }

    /** The whole picture. */
    public Drawing drawing() {
        String repeats = style.says().text("corner-repeats", count("repeats", layout.repeats()));
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
                                count("stitches", chart.shape().w())),
                marksIn(new Area(0, 0, widthMm(), heightMm())));
    }

    /** The marks that lie in an area or touch it, from the lowest to the topmost. */
    public List<Mark> marksIn(Area area) {
        List<GridCell> cells = cellsNear(area);
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.beside(
                MarkKind.PAPER,
                List.of(new Shape.Fill(
                        PenPath.rectangle(new Area(0, 0, widthMm(), heightMm())),
                        style.palette().paper()))));
        if (style.fabric()) {
            cells.forEach(cell -> addIfTouching(area, fabric(cell), marks));
        }
        addFurniture(area, Layer.GRID, marks);
        if (style.marks()) {
            cells.forEach(cell -> addIfTouching(area, toDo(cell), marks));
        }
        addFurniture(area, Layer.LABELS, marks);
        if (style.labels() && style.marks()) {
            cells.forEach(cell -> layout.cornerIn(cell)
                    .filter(round -> round > 0)
                    .ifPresent(round -> addIfTouching(area, cornerNumber(cell, round), marks)));
        }
        if (!flagged.isEmpty()) {
            cells.forEach(cell -> flags(cell).ifPresent(mark -> addIfTouching(area, mark, marks)));
        }
        addFurniture(area, Layer.FLAGS, marks);
        return marks;
    }

    /**
     * Where a place of the chart shows: for every cell in which it is drawn, that cell with all that a change of its stitch or
     * of its flags can alter.
     */
    public List<Area> areasOf(Place place) {
        return layout.cellsOf(place).stream()
                .map(cell -> {
                    Frame frame = layout.frameOf(cell, limbOf(cell).side());
                    double cellMm = layout.cellMm();
                    // A long stitch reaches two cells towards the piece; the ring's number stands out by less than one.
                    return Area.between(
                                    frame.xMm(-0.5, 0.5),
                                    frame.yMm(-0.5, 0.5),
                                    frame.xMm(0.5, -2.5),
                                    frame.yMm(0.5, -2.5))
                            .grown(cellMm);
                })
                .toList();
    }

    /** The drawn cells that can reach into an area, from the innermost round outwards. */
    private List<GridCell> cellsNear(Area area) {
        Area grid = layout.area();
        CellRange shown = layout.shown();
        double c = layout.cellMm();
        int firstColumn = clamp((int) Math.floor((area.xMm() - grid.xMm()) / c) - REACH, shown.columns());
        int firstRow = clamp((int) Math.floor((area.yMm() - grid.yMm()) / c) - REACH, shown.rows());
        int endColumn = clamp((int) Math.ceil((area.rightMm() - grid.xMm()) / c) + REACH, shown.columns());
        int endRow = clamp((int) Math.ceil((area.bottomMm() - grid.yMm()) / c) + REACH, shown.rows());
        List<List<GridCell>> byRound = new ArrayList<>();
        for (int r = 0; r <= layout.rounds(); r++) {
            byRound.add(new ArrayList<>());
        }
        for (int row = firstRow; row < endRow; row++) {
            for (int column = firstColumn; column < endColumn; column++) {
                GridCell cell = layout.cellAtColumn(shown.firstColumn() + column, shown.firstRow() + row);
                if (Math.min(cell.x(), cell.y()) < 0) {
                    byRound.get(roundOf(cell)).add(cell);
                }
            }
        }
        return byRound.stream().flatMap(List::stream).toList();
    }

    private void addIfTouching(Area area, Mark mark, List<Mark> marks) {
        GridCell cell = mark.cell().orElseThrow();
        if (area.holds(layout.areaOf(cell)) || area.touches(mark.bounds())) {
            marks.add(mark);
        }
    }

    private void addFurniture(Area area, Layer layer, List<Mark> marks) {
        for (Mark mark : furniture) {
            if (mark.kind().layer() == layer && area.touches(mark.bounds())) {
                marks.add(mark);
            }
        }
    }

    /** What shows in a cell. */
    private Mark fabric(GridCell cell) {
        FabricShapes shapes = new FabricShapes(layout.frameOf(cell, limbOf(cell).side()), layout.areaOf(cell), yarns);
        Optional<Place> place = layout.stitchIn(cell).map(ArmPlace::place);
        int round = roundOf(cell);
        if (round == 0) {
            return mark(MarkKind.FABRIC_BASE, cell, Optional.empty(), 0, shapes.base());
        }
        if (place.isEmpty()) {
            return mark(MarkKind.FABRIC_CORNER, cell, place, round, shapes.corner(round));
        }
        if (!chart.has(place.get())) {
            return mark(MarkKind.FABRIC_MISSING, cell, place, 0, shapes.bare());
        }
        int shown = chart.shownRound(place.get());
        return mark(
                MarkKind.FABRIC_STITCH,
                cell,
                place,
                shown,
                shapes.stitch(chart.stitch(place.get()), shown, shown != round));
    }

    /** What to do at a cell. */
    private Mark toDo(GridCell cell) {
        StitchShapes shapes =
                new StitchShapes(layout.frameOf(cell, limbOf(cell).side()), layout.cellMm(), style.inking());
        Optional<Place> place = layout.stitchIn(cell).map(ArmPlace::place);
        int round = roundOf(cell);
        if (round == 0) {
            return mark(MarkKind.BASE_STITCH, cell, Optional.empty(), 0, shapes.base(yarns.ground(0), style.palette()));
        }
        if (place.isEmpty()) {
            List<Shape> chains = StitchShapes.cornerChains(
                    layout.areaOf(cell),
                    style.turn().cornerAbove(),
                    chart.corner().chains(),
                    style.inking().on(yarns.ground(round)));
            return mark(MarkKind.CORNER_CHAINS, cell, place, round, chains);
        }
        if (!chart.has(place.get())) {
            return mark(MarkKind.MISSING, cell, place, 0, shapes.missing(style.palette()));
        }
        Stitch kind = chart.stitch(place.get());
        int shown = chart.shownRound(place.get());
        return mark(
                MarkKind.of(kind),
                cell,
                place,
                round,
                shapes.of(kind, yarns.mark(round), yarns.ground(shown), shownBelow(cell)));
    }

    private Mark mark(MarkKind kind, GridCell cell, Optional<Place> place, int yarnOfRound, List<Shape> shapes) {
        Optional<String> yarn = yarnOfRound == 0
                ? Optional.empty()
                : Optional.of(chart.round(yarnOfRound).yarn());
        return new Mark(kind, Optional.of(cell), place, yarn, shapes);
    }

    private Mark cornerNumber(GridCell cell, int round) {
        Area area = layout.areaOf(cell);
        String number = Integer.toString(round);
        double c = layout.cellMm();
        double size = CornerSheet.fitted(number, Shape.Weight.REGULAR, 0.41 * c, 0.8 * c);
        Shape text = new Shape.Text(
                number,
                area.middleXMm(),
                style.turn().cornerAbove()
                        ? area.bottomMm() - 0.12 * c
                        : area.yMm() + 0.12 * c + Lettering.CAPITAL * size,
                size,
                round % 10 == 0 ? Shape.Weight.BOLD : Shape.Weight.REGULAR,
                Shape.Anchor.MIDDLE,
                0,
                style.inking().on(yarns.ground(round)));
        return new Mark(MarkKind.ROUND_NUMBER, Optional.of(cell), Optional.empty(), Optional.empty(), List.of(text));
    }

    private Optional<Mark> flags(GridCell cell) {
        return layout.stitchIn(cell).flatMap(stitch -> {
            List<Emphasis.Flag> flags = flagged.get(stitch.place());
            return flags == null
                    ? Optional.empty()
                    : Optional.of(new Mark(
                            MarkKind.FLAG,
                            Optional.of(cell),
                            Optional.of(stitch.place()),
                            Optional.empty(),
                            FindingShapes.ring(layout.areaOf(cell), flags, style.palette())));
        });
    }

    /** How many of the two cells below this one, towards the piece, lie in what is shown. */
    private int shownBelow(GridCell cell) {
        boolean incoming = limbOf(cell) == Arm.INCOMING;
        int below = 0;
        for (int step = 1; step <= 2; step++) {
            int x = incoming ? cell.x() : cell.x() + step;
            int y = incoming ? cell.y() + step : cell.y();
            below += layout.isShown(new GridCell(x, y)) ? 1 : 0;
        }
        return below;
    }

    /** The limb a cell belongs to; corner chains are taken with the incoming one, which makes them. */
    private static Arm limbOf(GridCell cell) {
        return cell.y() <= cell.x() ? Arm.INCOMING : Arm.OUTGOING;
    }

    /** The round of a drawn cell. */
    private static int roundOf(GridCell cell) {
        return -1 - Math.min(cell.x(), cell.y());
    }

    private static int clamp(int number, int most) {
        return Math.max(0, Math.min(number, most));
    }
}
