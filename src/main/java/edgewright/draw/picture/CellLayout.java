package edgewright.draw.picture;

import edgewright.chart.BorderGrid;
import edgewright.chart.GridCell;
import edgewright.chart.GridContent;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.SidePlace;
import edgewright.chart.SideShape;
import edgewright.draw.grid.CellRange;
import edgewright.draw.grid.Direction;
import edgewright.draw.grid.Rotation;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Frame;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where each cell of a picture lies on the paper, and what lies in it. Every picture of a chart has one, whatever part of the
 * border it shows: from it come the marks of its cells, the marks that lie in an area, and the cell under a point.
 *
 * <p>Cells are those of {@link BorderGrid}. A kind of picture is a {@link Part} of that squared paper: which sections of which
 * sides it shows, and which corners. How the paper lies, and for which hand, is its {@link Placement}. A layout may show some
 * of its columns and rows only, as on one page of several.
 */
public abstract class CellLayout {
    /**
     * What of a border is drawn, from the base round outwards.
     *
     * @param rounds the outermost round; the base round is drawn too
     * @param sections the drawn sections of each side, next to each other; none for a side that is not drawn
     * @param corners the sides whose corner at their end is drawn
     */
    public record Part(BorderGrid grid, int rounds, PerSide<Set<Section>> sections, Set<Side> corners) {}

    /**
     * How the squared paper is laid down.
     *
     * @param cellMm the edge of a cell
     * @param rotation how far it is rotated from the way the border lies on the table
     * @param hand for a left-handed maker all of it, rotated, is seen in a mirror
     * @param shown the columns and rows that are shown; empty for all
     * @param leftMm where the first shown column begins
     * @param topMm where the first shown row begins
     */
    public record Placement(
            double cellMm, Rotation rotation, HookHand hand, Optional<CellRange> shown, double leftMm, double topMm) {}

    private final Part part;
    private final Placement placement;
    private final PaperBox box;
    private final CellRange shown;
    private final List<List<Run>> runs = new ArrayList<>();

    protected CellLayout(Part part, Placement placement) {
        this.part = part;
        this.placement = placement;
        // The innermost and the outermost round reach as far as any between them.
        this.box = PaperBox.around(Stream.concat(runsOf(0).stream(), runsOf(part.rounds()).stream())
                .flatMap(run -> Stream.of(run.first(), run.last()))
                .toList());
        this.shown = placement.shown().orElseGet(() -> new CellRange(0, 0, columns(), rows()));
        for (int round = 0; round <= part.rounds(); round++) {
            List<Run> found = runsOf(round);
            found.sort(Comparator.comparingInt((Run run) -> drawn(run).firstRow())
                    .thenComparingInt(run -> drawn(run).firstColumn()));
            runs.add(found);
        }
    }

    /** The squared paper that the picture is cut from. */
    public BorderGrid grid() {
        return part.grid();
    }

    /** How a side of the border is put together. */
    private SideShape shape(Side side) {
        return grid().border().on(side);
    }

    /** The outermost round. */
    public int rounds() {
        return part.rounds();
    }

    /** The edge of a cell. */
    public double cellMm() {
        return placement.cellMm();
    }

    /** How the picture lies, seen in a mirror for a left-handed maker. */
    public Rotation rotation() {
        return placement.rotation();
    }

    /** Whose border it is. */
    public HookHand hand() {
        return placement.hand();
    }

    /** The cells across the whole picture as it is drawn, shown or not. */
    public int columns() {
        return rotation().isOnItsSide() ? box.rows() : box.columns();
    }

    /** The cells down the whole picture as it is drawn, shown or not. */
    public int rows() {
        return rotation().isOnItsSide() ? box.columns() : box.rows();
    }

    /** The columns and rows that are shown. */
    public CellRange shown() {
        return shown;
    }

    /** The rectangle that holds all shown cells; of the piece what lies between them is in it too. */
    public Area area() {
        return new Area(placement.leftMm(), placement.topMm(), shown.columns() * cellMm(), shown.rows() * cellMm());
    }

    /** Where a cell lies on the paper, shown or not. */
    public Area areaOf(GridCell cell) {
        double c = cellMm();
        return new Area(
                placement.leftMm() + (columnOf(cell) - shown.firstColumn()) * c,
                placement.topMm() + (rowOf(cell) - shown.firstRow()) * c,
                c,
                c);
    }

    /** The cell at a point of the paper, if a stitch or a corner of the border is drawn there, be it of the base round. */
    public Optional<GridCell> cellAt(double xMm, double yMm) {
        return drawnAt(
                shown.firstColumn() + (int) Math.floor((xMm - placement.leftMm()) / cellMm()),
                shown.firstRow() + (int) Math.floor((yMm - placement.topMm()) / cellMm()));
    }

    /** The cell one step away, if something is drawn there. */
    public Optional<GridCell> neighbour(GridCell cell, Direction heading) {
        return drawnAt(columnOf(cell) + heading.columns(), rowOf(cell) + heading.rows());
    }

    private Optional<GridCell> drawnAt(int column, int row) {
        return shown.holds(column, row)
                ? Optional.of(cellAtColumn(column, row)).filter(this::isDrawn)
                : Optional.empty();
    }

    /** What the picture has in a cell, shown or not; empty for the piece and for what lies beyond. */
    public Optional<DrawnCell> contentOf(GridCell cell) {
        GridContent content = grid().contentOf(cell);
        if (content instanceof GridContent.CornerChains corner) {
            return part.corners().contains(corner.after()) && corner.round() <= rounds()
                    ? Optional.of(new DrawnCell.OfCorner(cell, corner.after(), corner.round()))
                    : Optional.empty();
        }
        if (!(content instanceof GridContent.SideStitch stitch)
                || stitch.place().round() > rounds()) {
            return Optional.empty();
        }
        Side side = stitch.side();
        Set<Section> sections = part.sections().get(side);
        if (sections.isEmpty()) {
            return Optional.empty();
        }
        DrawnCell.OfStitch drawn = stitch(cell, side, stitch.place());
        return sections.contains(drawn.place().section()) ? Optional.of(drawn) : Optional.empty();
    }

    /** The stitch that is drawn in a cell; empty for corner chains and for cells that show nothing of the border. */
    public Optional<DrawnCell.OfStitch> stitchIn(GridCell cell) {
        return contentOf(cell).filter(DrawnCell.OfStitch.class::isInstance).map(DrawnCell.OfStitch.class::cast);
    }

    /** The round whose corner chains are drawn in a cell; empty for any other cell. */
    public Optional<Integer> cornerIn(GridCell cell) {
        return contentOf(cell).filter(DrawnCell.OfCorner.class::isInstance).map(DrawnCell::round);
    }

    /** Whether a stitch or a corner of the border is drawn in this cell and the cell is among those that are shown. */
    public boolean isDrawn(GridCell cell) {
        return isShown(cell) && contentOf(cell).isPresent();
    }

    /** Whether this cell is among the columns and rows that are shown. */
    public boolean isShown(GridCell cell) {
        return shown.holds(columnOf(cell), rowOf(cell));
    }

    /**
     * The cell of a stitch of a side.
     *
     * @param occurrence which working of the repeat is meant, from 1; of no account in the corner sections
     */
    public GridCell cellOf(Side side, Place place, int occurrence) {
        return grid().cellOf(
                        side, shape(side).sidePlaceOf(place, grid().repeats().get(side), occurrence));
    }

    /** All shown cells in which a place of the chart is drawn, side by side and on each in working order. */
    public List<GridCell> cellsOf(Place place) {
        List<GridCell> cells = new ArrayList<>();
        for (Side side : Side.values()) {
            if (part.sections().get(side).contains(place.section())) {
                int times = place.section().times(grid().repeats().get(side));
                for (int occurrence = 1; occurrence <= times; occurrence++) {
                    GridCell cell = cellOf(side, place, occurrence);
                    if (isShown(cell)) {
                        cells.add(cell);
                    }
                }
            }
        }
        return List.copyOf(cells);
    }

    /** The charted rounds of which a shown cell has its middle in an area of the paper, ascending. */
    public List<Integer> rounds(Area area) {
        double half = cellMm() / 2;
        // A cell begins half a cell before its middle.
        Area begins = area.moved(-half, -half);
        CellWindow window = new CellWindow(
                        columns(begins.xMm(), true),
                        rows(begins.yMm(), true),
                        columns(begins.rightMm(), true),
                        rows(begins.bottomMm(), true))
                .within(CellWindow.of(shown));
        return IntStream.rangeClosed(1, rounds())
                .filter(round -> runs.get(round).stream()
                        .anyMatch(run -> !window.within(drawn(run)).isEmpty()))
                .boxed()
                .toList();
    }

    /**
     * What is drawn in the shown cells that lie in an area of the paper, or not farther from it than so many cells: from the
     * innermost round outwards.
     */
    List<DrawnCell> cellsNear(Area area, int reach) {
        CellWindow near = new CellWindow(
                        columns(area.xMm(), false) - reach,
                        rows(area.yMm(), false) - reach,
                        columns(area.rightMm(), true) + reach,
                        rows(area.bottomMm(), true) + reach)
                .within(CellWindow.of(shown));
        List<DrawnCell> cells = new ArrayList<>();
        for (List<Run> round : runs) {
            for (Run run : round) {
                CellWindow part = near.within(drawn(run));
                for (int row = part.firstRow(); row < part.endRow(); row++) {
                    for (int column = part.firstColumn(); column < part.endColumn(); column++) {
                        cells.add(inRun(run, cellAtColumn(column, row)));
                    }
                }
            }
        }
        return cells;
    }

    private DrawnCell inRun(Run run, GridCell cell) {
        if (run.firstStitch() == 0) {
            return new DrawnCell.OfCorner(cell, run.side(), run.round());
        }
        int on = Math.abs(cell.x() - run.first().x())
                + Math.abs(cell.y() - run.first().y());
        return stitch(cell, run.side(), new SidePlace(run.round(), run.firstStitch() + on));
    }

    private DrawnCell.OfStitch stitch(GridCell cell, Side side, SidePlace stitch) {
        Place place = shape(side).placeOf(stitch, grid().repeats().get(side));
        return new DrawnCell.OfStitch(cell, side, place, shape(side).occurrence(stitch, place));
    }

    /** How many columns end or, if begun ones count, begin left of a point of the paper. */
    private int columns(double xMm, boolean begun) {
        return shown.firstColumn() + whole((xMm - placement.leftMm()) / cellMm(), begun);
    }

    /** How many rows end or, if begun ones count, begin above a point of the paper. */
    private int rows(double yMm, boolean begun) {
        return shown.firstRow() + whole((yMm - placement.topMm()) / cellMm(), begun);
    }

    private static int whole(double cells, boolean up) {
        return (int) (up ? Math.ceil(cells) : Math.floor(cells));
    }

    /** Stitches side by side in a round, in working order, or a corner; {@code firstStitch} is 0 for a corner. */
    private record Run(int round, Side side, int firstStitch, GridCell first, GridCell last) {}

    /** What is drawn of a round: each corner, and of each side as much as is drawn of it. */
    private List<Run> runsOf(int round) {
        List<Run> found = new ArrayList<>();
        for (Side side : Side.values()) {
            if (part.corners().contains(side)) {
                GridCell corner = grid().cornerCell(side, round);
                found.add(new Run(round, side, 0, corner, corner));
            }
            Set<Section> sections = part.sections().get(side);
            int stitch = 1;
            int first = Integer.MAX_VALUE;
            int last = 0;
            for (Section section : Section.of(side)) {
                int stitches =
                        section.times(grid().repeats().get(side)) * shape(side).length(section, round);
                if (sections.contains(section) && stitches > 0) {
                    first = Math.min(first, stitch);
                    last = stitch + stitches - 1;
                }
                stitch += stitches;
            }
            if (last > 0) {
                found.add(new Run(
                        round,
                        side,
                        first,
                        grid().cellOf(side, new SidePlace(round, first)),
                        grid().cellOf(side, new SidePlace(round, last))));
            }
        }
        return found;
    }

    private CellWindow drawn(Run run) {
        int column = columnOf(run.first());
        int row = rowOf(run.first());
        int otherColumn = columnOf(run.last());
        int otherRow = rowOf(run.last());
        return new CellWindow(
                Math.min(column, otherColumn),
                Math.min(row, otherRow),
                Math.max(column, otherColumn) + 1,
                Math.max(row, otherRow) + 1);
    }

    /** The column of a cell as drawn, from 0 for the whole picture. */
    public int columnOf(GridCell cell) {
        return inMirror(box.columnOf(cell, rotation()));
    }

    /** The row of a cell as drawn, from 0 for the whole picture. */
    public int rowOf(GridCell cell) {
        return box.rowOf(cell, rotation());
    }

    /** The cell that is drawn in a column and a row, whether anything is drawn there or not. */
    public GridCell cellAtColumn(int column, int row) {
        return box.cellAt(inMirror(column), row, rotation());
    }

    private int inMirror(int column) {
        return hand() == HookHand.LEFT ? columns() - 1 - column : column;
    }

    /** The frame in which the marks of a side's cell are made. */
    Frame frameOf(GridCell cell, Side side) {
        Area area = areaOf(cell);
        Frame frame = Frame.of(quartersFromTop(side), area.middleXMm(), area.middleYMm(), cellMm());
        return hand() == HookHand.LEFT ? frame.mirrored() : frame;
    }

    /** Whether the piece lies below the corner at the end of this side as it is drawn, and not above it. */
    boolean isCornerAbove(Side after) {
        int quarters = quartersFromTop(after);
        return quarters == 0 || quarters == 3;
    }

    /** Which side this one is drawn as, counted anticlockwise from the top. */
    private int quartersFromTop(Side side) {
        // A rotation clockwise undoes the quarters anticlockwise from one side to the next.
        return Math.floorMod(side.ordinal() - rotation().ordinal(), 4);
    }

    /** Where a point of the squared paper lies, in cells before it is rotated: (0, 0) is the corner of the piece. */
    public Frame paperFrame() {
        Area zero = areaOf(new GridCell(0, 0));
        double c = cellMm();
        boolean mirrored = hand() == HookHand.LEFT;
        double left = mirrored ? zero.rightMm() : zero.xMm();
        double right = mirrored ? zero.xMm() : zero.rightMm();
        Frame frame = switch (rotation()) {
            case NONE -> new Frame(left, zero.yMm(), c, 0, 0, c);
            case QUARTER -> new Frame(right, zero.yMm(), 0, c, -c, 0);
            case HALF -> new Frame(right, zero.bottomMm(), -c, 0, 0, -c);
            case THREE_QUARTERS -> new Frame(left, zero.bottomMm(), 0, -c, c, 0);
        };
        return mirrored ? frame.mirrored() : frame;
    }
}
